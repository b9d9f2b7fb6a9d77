package org.shedboard.screen;

import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.pack.story.Reason;
import org.shedboard.shop.Person;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** Why a visit's next task is planned for when it is, in one sentence. */
public final class WhyLine {
    private final Outlook outlook;
    private final Day day;
    private final Visit visit;

    WhyLine(Outlook outlook, Visit visit) {
        this.outlook = outlook;
        this.day = outlook.day();
        this.visit = visit;
    }

    /** Empty where there is no task to start, or nothing keeps anybody from starting it now. */
    public static Optional<String> of(Outlook outlook, Visit visit) {
        return outlook.nextTaskOf(visit).flatMap(task -> new WhyLine(outlook, visit).sentence(task));
    }

    private Optional<String> sentence(Task task) {
        String because = outlook.whyThen(visit.id(), task.id()).stream()
                .flatMap(reason -> say(reason).stream())
                .distinct()
                .collect(Collectors.joining("; "));
        return outlook.timeOf(visit.id(), task.id())
                .filter(time -> !because.isEmpty())
                .map(time -> Words.say("why.then", task.name(), time(outlook.handsFrom(time)), because));
    }

    Optional<String> say(Reason reason) {
        if (reason instanceof Reason.Now || reason instanceof Reason.Begun) {
            return Optional.empty();
        } else if (reason instanceof Reason.Arrival arrival) {
            return Optional.of(Words.say("why.arrival", time(arrival.until())));
        } else if (reason instanceof Reason.Part part) {
            String why = visit.hold().isPresent() ? "why.held" : "why.part";
            return Optional.of(Words.say(why, time(part.until())));
        } else if (reason instanceof Reason.Pinned pinned) {
            return Optional.of(Words.say("why.pinned", time(pinned.until())));
        } else if (reason instanceof Reason.Task waits) {
            return Optional.of(Words.say("why.task", taskName(visit.id(), waits.task()), time(waits.until())));
        } else if (reason instanceof Reason.StayBefore before) {
            return Optional.of(Words.say("why.stay_before", time(before.until())));
        } else if (reason instanceof Reason.PlaceTaken taken) {
            return Optional.of(Words.say("why.place_taken", taken.place(), tag(taken.job()), time(taken.until())));
        } else if (reason instanceof Reason.PlaceClosed closed) {
            return Optional.of(Words.say("why.place_closed", closed.place(), time(closed.until())));
        } else if (reason instanceof Reason.Busy busy) {
            return Optional.of(busy(busy));
        } else if (reason instanceof Reason.Off off) {
            return Optional.of(Words.say("why.off", person(off.person()), time(off.until())));
        } else if (reason instanceof Reason.Chosen chosen) {
            return Optional.of(Words.say("why.chosen", time(chosen.earliest())));
        }
        throw new IllegalStateException("no words for " + reason);
    }

    private String busy(Reason.Busy busy) {
        String task = taskName(busy.job(), busy.task());
        return busy.job().equals(visit.id())
                ? Words.say("why.busy_here", person(busy.person()), task, time(busy.until()))
                : Words.say("why.busy", person(busy.person()), task, tag(busy.job()), time(busy.until()));
    }

    private String taskName(String visitId, String taskId) {
        return day.expectVisit(visitId).findTask(taskId).map(Task::name).orElse(taskId);
    }

    String tag(String visitId) {
        Visit other = day.expectVisit(visitId);
        return other.tag().isPresent()
                ? PlaceStatus.tagOf(other)
                : day.ownerOf(other).name();
    }

    private String person(String id) {
        return day.shop().findPerson(id).map(Person::name).orElse(id);
    }

    private String time(int minute) {
        return Clocks.sayTime(day, day.instantOf(minute));
    }
}
