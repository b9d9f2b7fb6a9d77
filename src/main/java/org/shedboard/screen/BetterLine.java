package org.shedboard.screen;

import java.util.Comparator;
import java.util.stream.Collectors;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.pack.story.Difference;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What a better plan changes for each visit: ready when instead of when, and what becomes of its promise; the most gained first. */
final class BetterLine {
    private final Day day;

    private BetterLine(Day day) {
        this.day = day;
    }

    static String of(Day day, Difference difference) {
        BetterLine line = new BetterLine(day);
        return difference.jobs().stream()
                .filter(job -> job.isEarlier() || job.isLater())
                .sorted(Comparator.comparingLong(Difference.Changed::gain).reversed())
                .map(line::say)
                .collect(Collectors.joining("; "));
    }

    private String say(Difference.Changed job) {
        String name = day.findVisit(job.job()).map(this::nameOf).orElse(job.job());
        String when = job.after().isEmpty()
                ? Words.say("better.out", name)
                : job.before().isEmpty()
                        ? Words.say("better.in", name, time(job.after().getAsInt()))
                        : Words.say(
                                "better.ready",
                                name,
                                time(job.after().getAsInt()),
                                time(job.before().getAsInt()));
        return switch (job.promise()) {
            case NOW_KEPT -> Words.say("better.kept", when);
            case NOW_MISSED -> Words.say("better.missed", when);
            case NONE, STILL_KEPT, STILL_MISSED -> when;
        };
    }

    private String nameOf(Visit visit) {
        return visit.tag().isPresent()
                ? PlaceStatus.tagOf(visit)
                : day.ownerOf(visit).name();
    }

    private String time(int minute) {
        return Clocks.sayTime(day, day.instantOf(minute));
    }
}
