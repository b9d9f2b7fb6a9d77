package org.shedboard.board;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Books;
import org.shedboard.day.Day;
import org.shedboard.register.Finder;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Visit;

/** Machines and owners of the books found by any part of the owner's name, the number, the label or the tag. */
public final class Found {
    private Found() {}

    /** What finds them in the books of a day. */
    public static Finder finder(Day day) {
        Books books = day.books();
        return Finder.of(books.owners(), books.machines(), books.register().merged());
    }

    static boolean isOf(Finder finder, Day day) {
        Books books = day.books();
        return finder.isOf(books.owners(), books.machines(), books.register().merged());
    }

    /** Nothing typed finds nothing. */
    public static List<Finder.Hit> by(Finder finder, Day day, String typed) {
        return finder.find(typed, tags(day));
    }

    /** Only the machines of what is found. */
    public static List<Machine> machines(Finder finder, Day day, String typed) {
        return by(finder, day, typed).stream()
                .flatMap(hit -> hit.machine().stream())
                .toList();
    }

    private static Map<Integer, String> tags(Day day) {
        Map<Integer, String> tags = new LinkedHashMap<>();
        day.visits().forEach(visit -> visit.tag().ifPresent(tag -> tags.put(tag, visit.machineId())));
        return tags;
    }

    /** The visit through which a machine is here or expected, if it is. */
    public static Optional<Visit> visitOf(Day day, Machine machine) {
        return day.visits().stream()
                .filter(visit -> visit.machineId().equals(machine.id()))
                .filter(visit -> visit.state().isOpen() || visit.state().isHere())
                .findFirst();
    }
}
