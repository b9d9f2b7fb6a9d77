package org.shedboard.screen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Style;
import org.shedboard.pack.Plan;
import org.shedboard.shop.HoistCheck;
import org.shedboard.shop.Place;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.words.Words;

/**
 * What a place is doing, in a few words: who is on what and how much is left, or from when it is free.
 *
 * @param text the words that must be seen
 * @param more what is added where there is room
 */
public record PlaceStatus(String text, String more, Style style) {
    public static PlaceStatus of(Outlook outlook, Place place) {
        Day day = outlook.day();
        Optional<Visit> standing = day.standingIn(place.id());
        Optional<String> closed = closed(day, place);
        if (standing.isPresent()) {
            PlaceStatus status = standing(outlook, place, standing.get());
            return closed.map(status::closedToo).orElse(status);
        }
        if (closed.isPresent()) {
            return new PlaceStatus(closed.get(), "", Style.CLOSED);
        }
        Optional<Plan.StayPlace> next = outlook.staysIn(place.id()).stream()
                .filter(stay -> stay.from() >= outlook.problem().now())
                .findFirst();
        return new PlaceStatus(
                next.map(stay -> Words.say("board.free_until", Clocks.sayTime(day, day.instantOf(stay.from()))))
                        .orElse(Words.say("board.free")),
                "",
                Style.FREE);
    }

    /** Why a hoist is not to be used today; empty when it may be, and for all other places. */
    private static Optional<String> closed(Day day, Place place) {
        Optional<HoistCheck> check = day.opening().flatMap(opening -> opening.checkOf(place.id()));
        if (!place.isHoist() || check.map(HoistCheck::isSound).orElse(false)) {
            return Optional.empty();
        }
        return Optional.of(check.flatMap(HoistCheck::lockedOut)
                .map(why -> Words.say("board.locked_out", why))
                .orElse(Words.say("board.not_checked")));
    }

    /** A machine stands on a hoist that is not to be used: that is said first. */
    private PlaceStatus closedToo(String why) {
        return new PlaceStatus(text + ", " + why, "", Style.DANGER);
    }

    private static PlaceStatus standing(Outlook outlook, Place place, Visit visit) {
        Day day = outlook.day();
        String tag = tagOf(visit);
        if (visit.state() == VisitState.HELD) {
            return visit.hold()
                    .map(hold -> new PlaceStatus(
                            Words.say("board.held", tag, Words.say(hold.reason())),
                            Words.say("board.held_until", Clocks.sayTime(day, hold.until())),
                            Style.HELD))
                    .orElse(new PlaceStatus(Words.say("board.held", tag, ""), "", Style.HELD));
        }
        List<Task> running = visit.tasks().stream()
                .filter(task -> task.progress().isRunning())
                .toList();
        String free = freeAgain(outlook, place);
        if (!running.isEmpty()) {
            String who = running.stream()
                    .map(task -> day.shop()
                            .expectPerson(task.progress().person().orElseThrow())
                            .name())
                    .collect(Collectors.joining(", "));
            return onIt(outlook, visit, running, who, free);
        }
        OptionalInt drips = unattendedLeft(outlook, visit);
        return drips.isPresent()
                ? new PlaceStatus(Words.say("board.unattended", tag, drips.getAsInt()), free, Style.UNATTENDED)
                : new PlaceStatus(Words.say("board.waiting", tag), free, Style.QUIET);
    }

    private static PlaceStatus onIt(Outlook outlook, Visit visit, List<Task> running, String who, String free) {
        int now = outlook.problem().now();
        int left = 0;
        int over = 0;
        for (Task task : running) {
            left = Math.max(
                    left,
                    outlook.timeOf(visit.id(), task.id())
                            .map(time -> time.end() - now)
                            .orElse(0));
            over = Math.max(over, outlook.minutesOver(task));
        }
        return over > 0
                ? new PlaceStatus(Words.say("board.running_over", tagOf(visit), who, over), free, Style.LATE)
                : new PlaceStatus(Words.say("board.who_on", tagOf(visit), who, left), free, Style.STRONG);
    }

    /** Minutes until what drains or soaks in the current stay needs hands again. */
    private static OptionalInt unattendedLeft(Outlook outlook, Visit visit) {
        int current = visit.currentStay();
        if (current >= visit.stays().size()) {
            return OptionalInt.empty();
        }
        Stay stay = visit.stays().get(current);
        int left = stay.tasks().stream()
                .filter(Task::isDone)
                .mapToInt(task -> outlook.day().minuteOf(task.progress().ended().orElseThrow())
                        + task.unattended()
                        - outlook.problem().now())
                .max()
                .orElse(0);
        return left > 0 ? OptionalInt.of(left) : OptionalInt.empty();
    }

    private static String freeAgain(Outlook outlook, Place place) {
        OptionalInt free = outlook.freeFrom(place.id());
        if (free.isEmpty()) {
            return "";
        }
        Day day = outlook.day();
        return Words.say("board.free_from", Clocks.sayTime(day, day.instantOf(free.getAsInt())));
    }

    /** The tag; the owner while it has none, cut short. */
    static String shortNameOf(Day day, Visit visit) {
        return visit.tag().isPresent()
                ? tagOf(visit)
                : day.ownerOf(visit).name().split(",", 2)[0];
    }

    static String tagOf(Visit visit) {
        return visit.tag().isPresent() ? String.valueOf(visit.tag().getAsInt()) : "-";
    }
}
