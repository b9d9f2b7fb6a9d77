package org.shedboard.pack.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.pack.Span;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * All the places that one kind of stay can be in. Whatever stays are allowed nowhere else stand in them, never more at a time than
 * there are open. A closed place counts as open where a machine already stands in it, because that one may stay through.
 */
final class Room {
    private final boolean[] isIn;
    /** How many can stand there during each minute of the axis. */
    final int[] space;

    private Room(FlatProblem flat, Axis axis, int[] places) {
        isIn = new boolean[flat.places];
        space = new int[axis.length];
        for (int place : places) {
            isIn[place] = true;
        }
        for (int place : places) {
            addSpace(flat, axis, place);
        }
    }

    private void addSpace(FlatProblem flat, Axis axis, int place) {
        for (int minute = 0; minute < space.length; minute++) {
            space[minute]++;
        }
        if (isHeld(flat, place)) {
            return;
        }
        for (Span span : flat.closed[place]) {
            for (int minute = axis.numberOf(span.from()); minute < axis.numberOf(span.to()); minute++) {
                space[minute]--;
            }
        }
    }

    private static boolean isHeld(FlatProblem flat, int place) {
        for (int stay = 0; stay < flat.stays; stay++) {
            if (flat.stayHasBegun[stay]
                    && Arrays.stream(flat.placesOfStay[stay]).anyMatch(one -> one == place)) {
                return true;
            }
        }
        return false;
    }

    static Room[] of(FlatProblem flat, Axis axis) {
        Map<List<Integer>, Room> rooms = new LinkedHashMap<>();
        for (int[] places : flat.placesOfStay) {
            if (places.length > 0) {
                List<Integer> key = Arrays.stream(places).sorted().boxed().toList();
                rooms.computeIfAbsent(key, unused -> new Room(flat, axis, places));
            }
        }
        return rooms.values().toArray(Room[]::new);
    }

    /** The numbers of the rooms that a stay of these places is sure to take space in. */
    static int[] around(Room[] rooms, int[] places) {
        List<Integer> found = new ArrayList<>();
        for (int room = 0; room < rooms.length && places.length > 0; room++) {
            Room candidate = rooms[room];
            if (Arrays.stream(places).allMatch(place -> candidate.isIn[place])) {
                found.add(room);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }
}
