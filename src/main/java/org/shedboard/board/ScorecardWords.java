package org.shedboard.board;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Books;
import org.shedboard.day.Clocks;
import org.shedboard.day.Figures;
import org.shedboard.estimate.MachineClass;
import org.shedboard.learn.Aim;
import org.shedboard.learn.Drift;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Score;
import org.shedboard.learn.Scorecard;
import org.shedboard.learn.Scored;
import org.shedboard.learn.SetAside;
import org.shedboard.learn.Sort;
import org.shedboard.words.Words;

/** A scorecard as a foreman would say it: on the screen and by the command alike. */
public final class ScorecardWords {
    /** From so many minutes on they are said in hours. */
    private static final int IN_HOURS = 180;

    /** Per cent beyond which nobody cares how much. */
    private static final long FAR = 900;

    private final Books books;
    private final Scorecard card;

    private ScorecardWords(Books books, Scorecard card) {
        this.books = books;
        this.card = card;
    }

    /**
     * Finished work that has something in common, in a row.
     *
     * @param figures pieces; stayed within likely; within safe; minutes off; how far it runs over. Where it is too little to say, what is said
     *     of that instead of the last four
     */
    public record Row(String name, List<String> figures) {
        public Row {
            figures = List.copyOf(figures);
        }
    }

    /** Rows under a heading. */
    public record Part(String heading, List<Row> rows) {
        public Part {
            rows = List.copyOf(rows);
        }
    }

    /** All there is to say of it in sentences, most important first. */
    public static List<String> of(Books books, Scorecard card) {
        return new ScorecardWords(books, card).sentences();
    }

    private List<String> sentences() {
        List<String> lines = new ArrayList<>();
        lines.add(whichWork());
        card.score().ifPresent(score -> lines.addAll(of(score)));
        lines.addAll(drifts(card.drifts()));
        if (card.drifts().isEmpty() && card.score().isPresent()) {
            lines.add(Words.say("scorecard.steady"));
        }
        if (!card.aside().isEmpty()) {
            lines.add(Words.say("scorecard.set_aside", card.aside().size()));
        }
        return lines;
    }

    private String whichWork() {
        int count = card.last().size();
        if (count == 0) {
            return Words.say("scorecard.none", Scored.LEAST);
        }
        if (card.score().isEmpty()) {
            return Words.say("scorecard.too_few", count, Scored.LEAST);
        }
        return Words.say(
                "scorecard.last",
                count,
                Clocks.sayFullDate(dateOf(card.last().get(0).lesson())),
                Clocks.sayFullDate(dateOf(card.last().get(count - 1).lesson())));
    }

    private static LocalDate dateOf(Lesson lesson) {
        return lesson.circumstances().date();
    }

    private static List<String> of(Score score) {
        return List.of(
                Words.say(
                        "scorecard.safe",
                        Math.round(score.safeShare() * score.count()),
                        score.count(),
                        aim(score.safeAim())),
                Words.say(
                        "scorecard.likely",
                        Math.round(score.likelyShare() * score.count()),
                        score.count(),
                        aim(score.likelyAim())),
                Words.say(
                        "scorecard.off",
                        Math.round(score.learned().meanMinutesOff()),
                        percent(score.learned().percentageError())),
                rival("scorecard.catalogue", score.learned(), score.catalogue()),
                rival("scorecard.last_ten", score.learned(), score.lastTen()));
    }

    private static String aim(Aim aim) {
        return Words.say("scorecard.aim." + aim);
    }

    private static String rival(String name, Score.Measures ours, Score.Measures rivals) {
        long further = Math.round(100 * (rivals.meanMinutesOff() / ours.meanMinutesOff() - 1));
        if (further >= FAR) {
            return Words.say("scorecard.far_off", Words.say(name));
        }
        if (further == 0) {
            return Words.say("scorecard.as_near", Words.say(name));
        }
        return Words.say(
                further > 0 ? "scorecard.further_off" : "scorecard.nearer", Words.say(name), Math.abs(further));
    }

    /** What runs away from what was said of it, a sentence each. */
    public static List<String> drifts(List<Drift> drifts) {
        return drifts.stream()
                .map(drift -> Words.say(
                        drift.factor() >= 1 ? "scorecard.drift_over" : "scorecard.drift_under",
                        sorts(drift.sort()),
                        Math.abs(over(drift.factor())),
                        Clocks.sayFullDate(drift.since()),
                        drift.pieces()))
                .toList();
    }

    /** Hundredths by which work ran over what was said; below nothing where it ran under. */
    private static long over(double factor) {
        return Math.round(100 * (factor - 1));
    }

    private static String sorts(Sort sort) {
        return Words.say("scorecard.sort." + sort);
    }

    /** What the figures of a row are, the name's heading first. */
    public static List<String> headings() {
        return List.of(
                Words.say("scorecard.column.what"),
                Words.say("scorecard.column.pieces"),
                Words.say("scorecard.column.likely"),
                Words.say("scorecard.column.safe"),
                Words.say("scorecard.column.off"),
                Words.say("scorecard.column.runs"));
    }

    /** The rows of a scorecard under their headings, after one with what they should be; none where nothing is finished. */
    public static List<Part> parts(Books books, Scorecard card) {
        return card.last().isEmpty() ? List.of() : new ScorecardWords(books, card).parts();
    }

    private List<Part> parts() {
        return List.of(
                new Part(
                        "",
                        List.of(
                                aims(),
                                row(Words.say("scorecard.all"), card.last().size(), card.score()))),
                new Part(
                        Words.say("scorecard.by_sort"),
                        card.bySort().stream()
                                .map(each -> row(sorts(each.what()), each))
                                .toList()),
                new Part(
                        Words.say("scorecard.by_class"),
                        card.byClass().stream()
                                .map(each -> row(className(each.what()), each))
                                .toList()),
                new Part(
                        Words.say("scorecard.by_person"),
                        card.byPerson().stream()
                                .map(each -> row(books.nameOf(each.what()), each))
                                .toList()));
    }

    private static Row aims() {
        return new Row(Words.say("scorecard.aims"), List.of("", percent(0.5) + "%", percent(0.8) + "%", "", "0%"));
    }

    private static Row row(String name, Scored<?> scored) {
        return row(name, scored.count(), scored.score());
    }

    /** A share that is further from what it should be than chance would have it has an exclamation mark. */
    private static Row row(String name, int count, Optional<Score> found) {
        List<String> figures = new ArrayList<>(List.of(String.valueOf(count)));
        found.ifPresentOrElse(
                score -> figures.addAll(List.of(
                        share(score.likelyShare(), score.likelyAim()),
                        share(score.safeShare(), score.safeAim()),
                        Words.say(
                                "scorecard.minutes", Math.round(score.learned().meanMinutesOff())),
                        signed(over(score.factor())))),
                () -> figures.add(Words.say("scorecard.too_few_here")));
        return new Row(name, figures);
    }

    private static String share(double share, Aim aim) {
        return (aim == Aim.MET ? "" : "!") + percent(share) + "%";
    }

    private static long percent(double share) {
        return Math.round(100 * share);
    }

    private static String signed(long over) {
        return (over > 0 ? "+" : "") + over + "%";
    }

    private String className(String classId) {
        return books.catalogue().findClass(classId).map(MachineClass::name).orElse(classId);
    }

    /** What was set aside, the newest first, each with why. */
    public static List<String> aside(Books books, Scorecard card) {
        ScorecardWords words = new ScorecardWords(books, card);
        return card.aside().stream().map(words::aside).toList();
    }

    private String aside(SetAside aside) {
        Lesson lesson = aside.lesson();
        return Words.say(
                "scorecard.aside",
                Clocks.sayFullDate(dateOf(lesson)),
                lesson.visitId(),
                className(lesson.circumstances().classId()),
                Words.say("scorecard.of_sort." + lesson.sort()),
                lesson.circumstances().mostBy().map(books::nameOf).orElse(Words.say("scorecard.nobody")),
                minutes(lesson.actualMinutes()),
                minutes(aside.expectedMinutes()),
                Words.say("scorecard.why." + aside.why()));
    }

    private static String minutes(double minutes) {
        long whole = Math.round(minutes);
        return whole < IN_HOURS
                ? Words.say("scorecard.minutes", whole)
                : Words.say("scorecard.hours", Figures.hours((int) whole));
    }
}
