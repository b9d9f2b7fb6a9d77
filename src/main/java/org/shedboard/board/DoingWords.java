package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.Trace;
import org.shedboard.register.Movement;
import org.shedboard.shop.Visit;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.Words;

/** What is said of an act before it is taken back, and what comes of that. */
final class DoingWords {
    private final Day day;
    private final SpanTally tally;

    DoingWords(Day day, SpanTally tally) {
        this.day = day;
        this.tally = tally;
    }

    /** The act, with the time at which it was done. */
    String of(Doings.Doing doing) {
        return Words.say("undo.doing", Clocks.sayTime(day, doing.at()), doing.sentence());
    }

    /** An act that stays, and why. */
    String stays(Doings.Doing doing, String why) {
        return Words.say("undo.stays", of(doing), why);
    }

    /** What comes of it when everything is as it was before, a sentence each. */
    List<String> outcome(Trace trace) {
        List<String> lines = new ArrayList<>();
        trace.visits().forEach(was -> lines.addAll(ofVisit(was)));
        trace.hours().forEach(hours -> lines.add(ofHours(hours)));
        if (!trace.hours().isEmpty()) {
            lines.add(Words.say("undo.rows_kept"));
        }
        trace.moved().forEach(moved -> lines.add(ofMovement(moved)));
        return lines;
    }

    private List<String> ofVisit(Trace.Was<Visit> was) {
        String name = Names.of(day, was.after());
        if (was.before().isEmpty()) {
            return List.of(Words.say("undo.called_off", name));
        }
        Visit before = was.before().get();
        List<String> lines = new ArrayList<>();
        if (before.state() != was.after().state()) {
            lines.add(Words.say("undo.state", name, Words.say(before.state())));
        }
        before.standsIn()
                .filter(place -> !was.after().standsIn().equals(Optional.of(place)))
                .ifPresent(place -> lines.add(Words.say(
                        "undo.stands", name, day.shop().expectPlace(place).name())));
        return lines;
    }

    private String ofHours(Trace.Hours hours) {
        String name = day.nameOf(hours.personId());
        return hours.openBefore()
                .map(open -> Words.say(
                        "undo.on_again", name, TallyWords.on(tally, open.activity()), Clocks.sayTime(day, open.from())))
                .orElseGet(() -> Words.say("undo.on_nothing", name));
    }

    private String ofMovement(Movement moved) {
        String item = day.books().catalogue().nameOfItem(moved.itemId());
        return Words.say(moved.change().isPositive() ? "undo.off_shelf" : "undo.on_shelf", item);
    }
}
