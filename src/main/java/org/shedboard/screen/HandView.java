package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.board.Board;
import org.shedboard.board.Hand;
import org.shedboard.board.Screen;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.Outlook;
import org.shedboard.day.Refusal;
import org.shedboard.day.Snag;
import org.shedboard.day.Tried;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.pack.Plan;
import org.shedboard.pack.story.Difference;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** A task in hand: what it is, what dropping it would break and cost, the places as they would be, and whose machine is ready when. */
final class HandView {
    private static final int LABEL = 12;
    private static final long MINUTES_AN_HOUR = 60;
    private static final long DAY_MINUTES = 24 * MINUTES_AN_HOUR;
    /** So many hours are said in hours. */
    private static final long LEAST_HOURS = 3;

    private final Canvas canvas;
    private final Board board;
    private final Hand hand;
    private final Outlook before;
    private final Outlook shown;
    private final Day day;

    HandView(Canvas canvas, Board board, Screen.InHand screen) {
        this.canvas = canvas;
        this.board = board;
        this.hand = screen.hand();
        this.before = board.expectOutlook();
        this.shown = hand.tried().map(Tried::after).orElse(before);
        this.day = before.day();
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, PlacesView.title(board), SightWords.of(board.sight()));
        Region rest = page.below(1);
        Visit visit = day.expectVisit(hand.visitId());
        String task = visit.findTask(hand.taskId()).orElseThrow().name();
        rest = labelled(
                rest, "hand.label", List.of(Words.say("hand.what", Names.of(day, visit), task), how()), Style.STRONG);
        rest = hand.tried().isPresent() ? outcome(rest, hand.tried().get()) : rest;
        PlacesView places = PlacesView.holding(canvas, board, shown, hand);
        rest = rest.below(places.drawPlaces(rest, page.height()));
        moves(rest);
    }

    private String how() {
        String lay = said(hand.lay().start(), layPlace(), hand.lay().person());
        if (hand.tried().isEmpty()) {
            return Words.say("hand.lay", lay) + " " + Words.say("hand.lifted_off");
        }
        return Words.say("hand.how", said(day.minuteOf(hand.start(day)), hand.place(before), hand.person()), lay);
    }

    private Optional<String> layPlace() {
        return before.plan().findStay(hand.visitId(), hand.lay().stay()).map(Plan.StayPlace::place);
    }

    private String said(int start, Optional<String> place, Optional<String> person) {
        List<String> parts = new ArrayList<>();
        parts.add(time(start));
        place.ifPresent(id -> parts.add(Words.say("pin.place", id)));
        person.ifPresent(id -> parts.add(Words.say("pin.person", day.nameOf(id))));
        return String.join(", ", parts);
    }

    private Region outcome(Region region, Tried tried) {
        if (tried.refused().isPresent()) {
            Refusal refusal = tried.refused().get();
            return labelled(region, "hand.refused", List.of(Words.say(refusal.name(), refusal.values())), Style.DANGER);
        }
        List<String> snags = tried.snags().stream().map(HandView::say).toList();
        Region rest = snags.isEmpty()
                ? labelled(region, "hand.breaks", List.of(Words.say("hand.breaks_nothing")), Style.GOOD)
                : labelled(region, "hand.breaks", snags, Style.DANGER);
        return labelled(rest, "hand.costs", List.of(cost(tried)), Style.NORMAL);
    }

    private static String say(Snag snag) {
        return Words.say("snag." + snag.kind(), snag.values());
    }

    private static String cost(Tried tried) {
        Difference difference = tried.difference().orElseThrow();
        long minutes = tried.minutesDearer();
        if (minutes == 0 && difference.earlier() + difference.later() == 0) {
            return Words.say("hand.costs_nothing");
        }
        String promises = String.format(Locale.ROOT, "%+d", difference.promises());
        return Words.say(
                minutes >= 0 ? "hand.dearer" : "hand.cheaper",
                amount(Math.abs(minutes)),
                difference.earlier(),
                difference.later(),
                promises);
    }

    /** Long times in hours: a minute more or less of them tells nobody anything; a missed promise weighs more than any hours do. */
    private static String amount(long minutes) {
        if (minutes > DAY_MINUTES) {
            return Words.say("hand.over_a_day");
        }
        return minutes < LEAST_HOURS * MINUTES_AN_HOUR
                ? Words.say("hand.minutes", minutes)
                : Words.say("hand.hours", minutes / MINUTES_AN_HOUR);
    }

    /** A word on the left, and sentences beside it; gives what is left below. */
    private Region labelled(Region region, String label, List<String> sentences, Style style) {
        canvas.text(region.row(0).left(LABEL).inside(1, 0), Words.say(label), Style.STRONG);
        Region rest = region;
        for (String sentence : sentences) {
            int before = rest.height();
            Region below = canvas.paragraph(rest.rightOf(LABEL), sentence, style);
            rest = rest.below(before - below.height());
        }
        return rest;
    }

    private void moves(Region region) {
        if (hand.tried().flatMap(Tried::difference).isEmpty()) {
            return;
        }
        List<Difference.Changed> changed = hand.tried().get().difference().orElseThrow().jobs().stream()
                .filter(job -> job.isEarlier() || job.isLater())
                .toList();
        String heading = Words.say(changed.isEmpty() ? "hand.moves_nothing" : "hand.moves");
        canvas.text(region.row(0).inside(1, 0), heading, Style.STRONG);
        for (int row = 0; row < Math.min(changed.size(), region.height() - 1); row++) {
            Difference.Changed job = changed.get(row);
            String line = Words.say(
                    "hand.ready", Names.of(day, day.expectVisit(job.job())), time(job.after()), time(job.before()));
            boolean isMissed = job.promise() == Difference.Promise.NOW_MISSED;
            canvas.text(region.row(row + 1).inside(1, 0), line, isMissed ? Style.DANGER : Style.NORMAL);
        }
    }

    private String time(OptionalInt minute) {
        return minute.isPresent() ? time(minute.getAsInt()) : "-";
    }

    private String time(int minute) {
        return Clocks.sayTime(day, day.instantOf(minute));
    }
}
