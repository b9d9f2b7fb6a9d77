package org.shedboard.day;

import org.shedboard.shop.Machine;
import org.shedboard.shop.Visit;

/** What a visit is called in a sentence: its tag and the owner, as people in the shed say it. */
public final class Names {
    private Names() {}

    public static String of(Day day, Visit visit) {
        return of(day.books(), visit);
    }

    /** A machine by its owner and what it is. */
    public static String of(Books books, Machine machine) {
        return books.expectOwner(machine.ownerId()).name() + ", " + machine.label();
    }

    public static String of(Books books, Visit visit) {
        String owner = books.ownerOf(visit).name();
        return visit.tag().isPresent() ? visit.tag().getAsInt() + " (" + owner + ")" : owner;
    }
}
