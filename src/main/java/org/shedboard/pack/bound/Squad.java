package org.shedboard.pack.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/** People who are alike in all that matters to a bound: the same windows and skills, and the same minutes for every task. */
final class Squad {
    final int[] people;
    final int count;
    /** The number on the axis at which each of their working minutes begins. */
    final int[] wall;
    /** Whether it is overtime. */
    final boolean[] isExtra;

    private Squad(FlatProblem flat, Axis axis, int[] people) {
        this.people = people;
        count = people.length;
        Hours hours = flat.hours[people[0]];
        int first = hours.worked(flat.problem.now());
        int minutes = hours.worked(axis.firstMinute(axis.length)) - first;
        wall = new int[minutes];
        isExtra = new boolean[minutes];
        for (int index = 0; index < minutes; index++) {
            wall[index] = axis.numberOf(hours.wall(first + index));
            isExtra[index] = hours.overtimeBefore(first + index + 1) > hours.overtimeBefore(first + index);
        }
    }

    static Squad[] of(FlatProblem flat, Axis axis) {
        Map<List<Object>, List<Integer>> alike = new LinkedHashMap<>();
        for (int person = 0; person < flat.people; person++) {
            alike.computeIfAbsent(traits(flat, person), unused -> new ArrayList<>())
                    .add(person);
        }
        return alike.values().stream()
                .map(people -> new Squad(
                        flat, axis, people.stream().mapToInt(Integer::intValue).toArray()))
                .toArray(Squad[]::new);
    }

    private static List<Object> traits(FlatProblem flat, int person) {
        Problem.Person values = flat.problem.people().get(person);
        List<List<Integer>> ownMinutes = new ArrayList<>();
        for (int task = 0; task < flat.tasks; task++) {
            Integer own = flat.task[task].handsOnBy().get(values.id());
            if (own != null) {
                ownMinutes.add(List.of(task, own));
            }
        }
        return List.of(values.skills(), new HashSet<>(values.shifts()), new HashSet<>(values.overtime()), ownMinutes);
    }

    boolean has(int person) {
        return Arrays.stream(people).anyMatch(one -> one == person);
    }

    /** Their first working minute at or after a number on the axis. */
    int firstFrom(int number) {
        int found = Arrays.binarySearch(wall, number);
        return found >= 0 ? found : -found - 1;
    }
}
