package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Clocks;
import org.shedboard.day.Outlook;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Task;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What is insisted on for a task, said; on the screens and by the commands alike. */
public final class PinText {
    private PinText() {}

    /** Empty where nothing is insisted on that has not begun. */
    public static Optional<String> of(Outlook outlook, Visit visit, Task task) {
        return task.hasBegun()
                ? Optional.empty()
                : task.pin().map(pin -> {
                    String said = Words.say("pin.of", parts(outlook, pin));
                    return isKept(outlook, visit, task, pin) ? said : said + " " + Words.say("pin.overtaken");
                });
    }

    private static String parts(Outlook outlook, TaskPin pin) {
        List<String> parts = new ArrayList<>();
        pin.at().ifPresent(at -> parts.add(Words.say("pin.at", Clocks.sayTime(outlook.day(), at))));
        pin.placeId().ifPresent(place -> parts.add(Words.say("pin.place", place)));
        pin.personId()
                .ifPresent(person ->
                        parts.add(Words.say("pin.person", outlook.day().nameOf(person))));
        return String.join(", ", parts);
    }

    private static boolean isKept(Outlook outlook, Visit visit, Task task, TaskPin pin) {
        return outlook.timeOf(visit.id(), task.id())
                .filter(time -> pin.at()
                        .filter(at -> outlook.day().minuteOf(at) != time.start())
                        .isEmpty())
                .filter(time -> pin.personId().isEmpty()
                        || time.person().isEmpty()
                        || time.person().equals(pin.personId()))
                .filter(time -> pin.placeId().isEmpty()
                        || outlook.plan()
                                .findStay(visit.id(), time.stay())
                                .map(Plan.StayPlace::place)
                                .equals(pin.placeId()))
                .isPresent();
    }
}
