package org.shedboard.app;

import java.util.Optional;
import org.shedboard.day.Act;

/** Who does an act, for the journal: whoever it names, else whoever is at the terminal. */
final class Actor {
    private Actor() {}

    static String of(Act act, String atTerminal) {
        if (act instanceof Act.Start start) {
            return start.personId();
        }
        if (act instanceof Act.Finish finish) {
            return finish.personId();
        }
        if (act instanceof Act.Tick tick) {
            return tick.personId();
        }
        if (act instanceof Act.DoOther other) {
            return other.personId();
        }
        if (act instanceof Act.Stop stop) {
            return stop.personId();
        }
        if (act instanceof Act.SayPromise promise) {
            return promise.by();
        }
        if (act instanceof Act.OpenDay open) {
            return open.by();
        }
        if (act instanceof Act.TakeBreak pause) {
            return pause.personId();
        }
        if (act instanceof Act.Lend lend) {
            return lend.personId();
        }
        if (act instanceof Act.BringBack back) {
            return back.personId();
        }
        if (act instanceof Act.CloseDay close) {
            return close.by();
        }
        if (act instanceof Act.Correct correct) {
            return correct.by();
        }
        if (act instanceof Act.SetHoursRules set) {
            return set.by();
        }
        if (act instanceof Act.SetPackedPercent set) {
            return set.by();
        }
        if (act instanceof Act.AcceptFigure accept) {
            return accept.by();
        }
        if (act instanceof Act.TakeBack back) {
            return back.by();
        }
        return atShelf(act).orElse(atTerminal);
    }

    private static Optional<String> atShelf(Act act) {
        if (act instanceof Act.FitPart fit) {
            return Optional.of(fit.personId());
        }
        if (act instanceof Act.CountStock count) {
            return Optional.of(count.by());
        }
        if (act instanceof Act.OrderStock order) {
            return Optional.of(order.by());
        }
        return act instanceof Act.OrderCame came ? Optional.of(came.by()) : Optional.empty();
    }
}
