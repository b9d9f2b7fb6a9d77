package org.shedboard.board;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.day.Day;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Visit;

/** Machines found by any part of the owner's name, the number, the label or the tag. */
public final class Found {
    private Found() {}

    /** Every word typed must occur; what begins with the first word comes first. Nothing typed finds nothing. */
    public static List<Machine> by(Day day, String typed) {
        List<String> words = Stream.of(typed.toLowerCase(Locale.ROOT).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
        if (words.isEmpty()) {
            return List.of();
        }
        return day.books().machines().stream()
                .filter(machine -> words.stream().allMatch(text(day, machine)::contains))
                .sorted(Comparator.comparing(
                                (Machine machine) -> !text(day, machine).startsWith(words.get(0)))
                        .thenComparing(machine -> text(day, machine)))
                .toList();
    }

    private static String text(Day day, Machine machine) {
        String tags = day.visits().stream()
                .filter(visit -> visit.machineId().equals(machine.id()))
                .flatMapToInt(visit -> visit.tag().stream())
                .mapToObj(String::valueOf)
                .reduce("", (all, tag) -> all + " " + tag);
        String owner = day.books().expectOwner(machine.ownerId()).name();
        return (owner + " " + machine.label() + " " + machine.number() + tags).toLowerCase(Locale.ROOT);
    }

    /** The visit through which a machine is here or expected, if it is. */
    public static Optional<Visit> visitOf(Day day, Machine machine) {
        return day.visits().stream()
                .filter(visit -> visit.machineId().equals(machine.id()))
                .filter(visit -> visit.state().isOpen() || visit.state().isHere())
                .findFirst();
    }
}
