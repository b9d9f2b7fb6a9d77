package org.shedboard.screen;

import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What a machine waits for, in a few words. */
final class YardWaits {
    private final Outlook outlook;
    private final Day day;
    private final Visit visit;

    YardWaits(Outlook outlook, Visit visit) {
        this.outlook = outlook;
        this.day = outlook.day();
        this.visit = visit;
    }

    String text() {
        return switch (visit.state()) {
            case HELD -> visit.hold().map(this::held).orElse("");
            case BOOKED ->
                Words.say(
                        "yard.waits_arrival", Clocks.sayTime(day, visit.intake().arrives()));
            case DONE -> Words.say("yard.waits_owner", day.ownerOf(visit).phone());
            default -> worked().orElseGet(this::planned);
        };
    }

    private String held(Hold hold) {
        String until = Clocks.sayTime(day, hold.until());
        return hold.note().isEmpty()
                ? Words.say("yard.waits_hold", Words.say(hold.reason()), until)
                : Words.say("yard.waits_note", Words.say(hold.reason()), until, hold.note());
    }

    private Optional<String> worked() {
        return visit.tasks().stream()
                .filter(task -> task.progress().isRunning())
                .findFirst()
                .map(task -> Words.say("yard.waits_working", nameOf(task), task.name()));
    }

    private String nameOf(Task task) {
        return PlacesView.nameOf(day, task.progress().person().orElseThrow());
    }

    private String planned() {
        Optional<Task> next = outlook.nextTaskOf(visit);
        if (next.flatMap(task -> outlook.timeOf(visit.id(), task.id())).isEmpty()) {
            return Words.say("yard.waits_plan");
        }
        WhyLine why = new WhyLine(outlook, visit);
        String reasons = outlook.whyThen(visit.id(), next.orElseThrow().id()).stream()
                .flatMap(reason -> why.say(reason).stream())
                .distinct()
                .collect(Collectors.joining("; "));
        return reasons.isEmpty() ? Words.say("yard.waits_nobody") : reasons;
    }
}
