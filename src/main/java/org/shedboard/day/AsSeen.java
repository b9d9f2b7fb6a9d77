package org.shedboard.day;

/**
 * A day as somebody saw it when they made up their mind.
 *
 * @param change number of the newest change of the records that is in it
 */
public record AsSeen(Day day, long change) {}
