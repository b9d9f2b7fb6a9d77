package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.day.Clocks;
import org.shedboard.day.CrewDay;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Style;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/**
 * What somebody is doing, in a few words: on what, how much is left, how far over the shift, when free.
 *
 * @param parts the most needed first
 */
record CrewStatus(List<String> parts, Style style) {
    CrewStatus {
        parts = List.copyOf(parts);
    }

    static CrewStatus of(CrewDay crew) {
        Day day = crew.outlook().day();
        if (!day.isOpened()) {
            return new CrewStatus(List.of(expected(crew)), Style.QUIET);
        }
        if (!day.isHere(crew.person())) {
            return new CrewStatus(List.of(Words.say("crew.not_here")), Style.QUIET);
        }
        List<String> parts = new ArrayList<>();
        now(crew).ifPresent(parts::add);
        int over = crew.minutesOver();
        if (over > 0) {
            parts.add(Words.say("crew.over_shift", over));
        }
        if (now(crew).isEmpty()) {
            crew.next().map(next -> next(crew, next)).ifPresent(parts::add);
        }
        parts.add(free(crew));
        boolean nothing = now(crew).isEmpty();
        return new CrewStatus(parts, over > 0 || isLate(crew) ? Style.LATE : nothing ? Style.FREE : Style.STRONG);
    }

    private static Optional<String> now(CrewDay crew) {
        Day day = crew.outlook().day();
        Optional<Day.Running> running = day.runningOf(crew.person().id());
        if (running.isPresent()) {
            return Optional.of(on(crew, running.get().visit(), running.get().task()));
        }
        return day.openEntryOf(crew.person().id()).map(ClockEntry::activity).flatMap(CrewStatus::besides);
    }

    private static String on(CrewDay crew, Visit visit, Task task) {
        String name = PlaceStatus.shortNameOf(crew.outlook().day(), visit);
        int over = crew.outlook().minutesOver(task);
        int left = crew.outlook()
                .timeOf(visit.id(), task.id())
                .map(time -> time.end() - crew.outlook().problem().now())
                .orElse(0);
        return over > 0 ? Words.say("crew.running_over", name, over) : Words.say("crew.on", name, left);
    }

    private static boolean isLate(CrewDay crew) {
        return crew.outlook()
                .day()
                .runningOf(crew.person().id())
                .filter(running -> crew.outlook().minutesOver(running.task()) > 0)
                .isPresent();
    }

    /** What is no work on a machine. */
    private static Optional<String> besides(Activity activity) {
        if (activity instanceof Activity.OtherWork other) {
            return Optional.of(Words.say("otherWork." + other.kind()));
        }
        return activity instanceof Activity.Break rest
                ? Optional.of(Words.say("break." + rest.kind()))
                : Optional.empty();
    }

    private static String free(CrewDay crew) {
        OptionalInt from = crew.freeFrom();
        if (from.isEmpty()) {
            return Words.say("crew.nothing_free");
        }
        return from.getAsInt() == crew.outlook().problem().now()
                ? Words.say("board.free_until", time(crew, crew.freeUntil(from.getAsInt())))
                : Words.say("board.free_from", time(crew, from.getAsInt()));
    }

    private static String next(CrewDay crew, Plan.TaskTime next) {
        Outlook outlook = crew.outlook();
        String name = PlaceStatus.shortNameOf(outlook.day(), outlook.day().expectVisit(next.job()));
        return Words.say("crew.next", name, time(crew, outlook.handsFrom(next)));
    }

    private static String expected(CrewDay crew) {
        return crew.shifts().isEmpty()
                ? Words.say("crew.not_here")
                : Words.say("crew.expected", time(crew, crew.shifts().get(0).from()));
    }

    static String time(CrewDay crew, int minute) {
        Day day = crew.outlook().day();
        return Clocks.sayTime(day, day.instantOf(minute));
    }
}
