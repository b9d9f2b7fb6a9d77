package org.shedboard.register;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * When a machine is to be serviced next.
 *
 * @param workId the service, the biggest one that is due by then
 * @param by what comes first
 * @param dial what decides on the meter; empty where the months decide
 * @param dates when, as it is used
 * @param window while it may be done without being early or late
 */
public record NextDue(String machineId, String workId, By by, Optional<Dial> dial, Dates dates, Window window) {
    /** What a service can be due by. */
    public enum By {
        HOURS,
        KILOMETRES,
        MONTHS
    }

    /** What the meter shows when it is due, and what it would show now. */
    public record Dial(Reading.Unit unit, double due, double now) {
        public String sayDue() {
            return unit.say(Math.rint(due));
        }

        public String sayNow() {
            return unit.say(Math.rint(now));
        }

        /** How far it is from being due, either way. */
        public String sayLeft() {
            return unit.say(Math.abs(Math.rint(left())));
        }

        /** Hours or kilometres until then; negative where they are over. */
        public double left() {
            return due - now;
        }
    }

    /**
     * A date with its range.
     *
     * @param early if it is used much
     * @param late if it is used little
     */
    public record Dates(LocalDate early, LocalDate likely, LocalDate late) {
        Dates orSooner(Dates other) {
            return new Dates(sooner(early, other.early), sooner(likely, other.likely), sooner(late, other.late));
        }

        /** Whether it is a date at all, not a range. */
        public boolean isSharp() {
            return early.equals(late);
        }
    }

    /** From the day it may be done until the last day it is not overdue. */
    public record Window(LocalDate opens, LocalDate closes) {
        Window orSooner(Window other) {
            return new Window(sooner(opens, other.opens), sooner(closes, other.closes));
        }
    }

    /** How a day lies to it. */
    public enum State {
        AHEAD,
        DUE,
        OVERDUE
    }

    private static LocalDate sooner(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }

    public State on(LocalDate today) {
        if (today.isAfter(window.closes())) {
            return State.OVERDUE;
        }
        return today.isBefore(window.opens()) ? State.AHEAD : State.DUE;
    }

    /** Days until the likely date; negative where it is past. */
    public long daysLeft(LocalDate today) {
        return ChronoUnit.DAYS.between(today, dates.likely());
    }
}
