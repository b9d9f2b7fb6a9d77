package org.shedboard.day;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

/**
 * A day that has begun: the acts that lead up to the moment at which a demonstration opens.
 *
 * @param opensAt the time of that date at which it opens
 * @param acts in the order of their times; the first may lie on the working days before
 */
public record Morning(LocalDate date, LocalTime opensAt, List<TimedAct> acts) {
    public Morning {
        acts = List.copyOf(acts);
    }
}
