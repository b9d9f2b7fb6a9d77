package org.shedboard.pack.numbers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What keeps people and places in a plan: who is on what from which working minute to which, and which stays are where. */
public final class Engagements {
    private final List<List<Work>> ofPerson = new ArrayList<>();
    private final List<List<Integer>> staysIn = new ArrayList<>();
    private final int[] from;
    private final int[] to;

    /** One person's work on one task, in that person's working minutes. */
    public record Work(int task, int from, int to) {}

    public Engagements(FlatProblem flat, PlanReading plan) {
        from = new int[flat.stays];
        to = new int[flat.stays];
        Arrays.fill(from, Hours.FAR);
        for (int person = 0; person < flat.people; person++) {
            ofPerson.add(new ArrayList<>());
        }
        for (int place = 0; place < flat.places; place++) {
            staysIn.add(new ArrayList<>());
        }
        for (int task : plan.order) {
            int stay = flat.stayOfTask[task];
            from[stay] = flat.stayHasBegun[stay] ? 0 : Math.min(from[stay], plan.start[task]);
            to[stay] = Math.max(to[stay], plan.end[task] + flat.unattended[task]);
            for (int person : flat.state[task] == FlatProblem.DONE ? new int[0] : plan.who[task]) {
                int work = flat.hours[person].worked(Math.max(flat.problem.now(), plan.start[task]));
                ofPerson.get(person).add(new Work(task, work, work + flat.minutes[task][person]));
            }
        }
        for (int stay = 0; stay < flat.stays; stay++) {
            if (plan.placeOfStay[stay] >= 0) {
                staysIn.get(plan.placeOfStay[stay]).add(stay);
            }
        }
    }

    public List<Work> ofPerson(int person) {
        return ofPerson.get(person);
    }

    public List<Integer> staysIn(int place) {
        return staysIn.get(place);
    }

    /** When the stay's first task starts; 0 for one that has begun. */
    public int from(int stay) {
        return from[stay];
    }

    public int to(int stay) {
        return to[stay];
    }
}
