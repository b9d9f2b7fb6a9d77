package org.shedboard.day;

import java.util.Optional;
import org.shedboard.shop.TaskPin;

/** Acts of a hand that moves tasks of the shed's plan. */
final class Hand {
    private Hand() {}

    static Act.PinTask place(String visit, String task, String place) {
        return pin(visit, task, Optional.of(place), Optional.empty(), Optional.empty());
    }

    static Act.PinTask at(String visit, String task, String time) {
        return pin(visit, task, Optional.empty(), Optional.of(time), Optional.empty());
    }

    static Act.PinTask person(String visit, String task, String person) {
        return pin(visit, task, Optional.empty(), Optional.empty(), Optional.of(person));
    }

    static Act.PinTask personAt(String visit, String task, String person, String time) {
        return pin(visit, task, Optional.empty(), Optional.of(time), Optional.of(person));
    }

    private static Act.PinTask pin(
            String visit, String task, Optional<String> place, Optional<String> time, Optional<String> person) {
        return new Act.PinTask(visit, task, new TaskPin(place, time.map(Shed::time), person));
    }
}
