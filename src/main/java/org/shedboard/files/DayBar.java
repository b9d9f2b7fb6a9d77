package org.shedboard.files;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Names;
import org.shedboard.hours.Activity;
import org.shedboard.hours.PersonDay;
import org.shedboard.hours.Stretch;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.Stamps;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.Words;

/** One person's day as a bar on the hours of the clock: machines by their tags, other work by its letter, all else by its form. */
record DayBar(SpanTally tally, DayAxis axis) {
    private static final double HEIGHT = 4.2;
    private static final double TOP = 0.3;
    private static final double BOTTOM = 3.9;

    /** Stretches of one kind that touch; of machines those on the same one. */
    private record Run(Stretch first, Instant to) {
        boolean goesOnWith(Stretch next) {
            return to.equals(next.from())
                    && first.use() == next.use()
                    && visitOf(first).equals(visitOf(next))
                    && (first.use() == Stretch.Use.ON_MACHINE || first.on().equals(next.on()));
        }

        Run until(Instant end) {
            return new Run(first, end);
        }
    }

    private static Optional<String> visitOf(Stretch stretch) {
        return stretch.on().filter(Activity.OnStay.class::isInstance).map(on -> ((Activity.OnStay) on).visitId());
    }

    private static List<Run> runs(PersonDay day) {
        List<Run> runs = new ArrayList<>();
        for (Stretch stretch : day.stretches()) {
            int last = runs.size() - 1;
            if (last >= 0 && runs.get(last).goesOnWith(stretch)) {
                runs.set(last, runs.get(last).until(stretch.to()));
            } else {
                runs.add(new Run(stretch, stretch.to()));
            }
        }
        return runs;
    }

    /** @param id unlike that of any other drawing of the page */
    Element draw(PersonDay day, String id) {
        List<Run> runs = runs(day);
        String name = tally.ledger().books().nameOf(day.personId());
        String title = Words.say("sheet.day_of", name, Stamps.date(day.date()));
        String words = String.join("; ", runs.stream().map(this::words).toList());
        Picture picture = Picture.of(DayAxis.WIDTH, HEIGHT, id, title, words);
        axis.rule(picture, HEIGHT);
        for (Run run : runs) {
            Box box = Box.between(axis.x(day.date(), run.first().from()), axis.x(day.date(), run.to()), TOP, BOTTOM);
            draw(picture, box, run.first().use(), label(run.first()));
        }
        return picture.element();
    }

    private String words(Run run) {
        return Words.say(
                "sheet.stretch",
                Stamps.time(tally.ledger(), run.first().from()),
                Stamps.time(tally.ledger(), run.to()),
                what(run.first()));
    }

    private String what(Stretch stretch) {
        return switch (stretch.use()) {
            case ON_MACHINE ->
                TallyWords.visitOf(tally, stretch)
                        .map(visit -> Names.of(tally.ledger().books(), visit))
                        .orElse(Words.say("sheet.on_machine"));
            case OTHER_WORK -> Words.say("otherWork." + kindOf(stretch));
            default -> SheetLegend.word(stretch.use());
        };
    }

    private static Activity.OtherWork.Kind kindOf(Stretch stretch) {
        return ((Activity.OtherWork) stretch.on().orElseThrow()).kind();
    }

    static void draw(Picture picture, Box box, Stretch.Use use, String label) {
        switch (use) {
            case ON_MACHINE -> picture.full(box);
            case OTHER_WORK -> picture.hatched(box);
            case REST -> picture.empty(box).through(box, 0.5, "none");
            case REST_TO_SAY -> picture.empty(box);
            case FREE -> picture.through(box, 0.4, "0.4 0.8");
            case UNACCOUNTED -> picture.dotted(box);
        }
        if (!label.isEmpty() && box.holds(label)) {
            picture.label(box, label);
        }
    }

    /** The tag of a machine, or what its owner is called where it has none any more; the letter of other work. */
    private String label(Stretch stretch) {
        return switch (stretch.use()) {
            case ON_MACHINE -> TallyWords.tag(tally, stretch);
            case OTHER_WORK -> SheetLegend.letter(kindOf(stretch));
            case REST_TO_SAY -> SheetLegend.TO_SAY;
            default -> "";
        };
    }
}
