package org.shedboard.shop;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Someone who works here.
 *
 * @param role what they are called in the shop ("foreman", "first-year apprentice"), for display only
 * @param pacePercent hands-on minutes this person takes for a hundred catalogue minutes
 * @param shifts usual hours of a working day, in order; the gaps between them are breaks
 * @param overtime hours they may be asked for beyond those, in order
 */
public record Person(
        String id,
        String name,
        String role,
        Set<Skill> skills,
        int pacePercent,
        List<Window> shifts,
        List<Window> overtime) {
    public Person {
        skills = Set.copyOf(skills);
        shifts = List.copyOf(shifts);
        overtime = List.copyOf(overtime);
        if (shifts.isEmpty()) {
            throw new IllegalArgumentException("%s has no shift".formatted(name));
        }
        if (pacePercent < 10 || pacePercent > 1000) {
            throw new IllegalArgumentException("%s cannot work at %s %% of the catalogue".formatted(name, pacePercent));
        }
    }

    public boolean may(Skill skill) {
        return skills.contains(skill);
    }

    /** The gaps between the usual shifts. */
    public List<Window> breaks() {
        List<Window> breaks = new ArrayList<>();
        for (int i = 1; i < shifts.size(); i++) {
            LocalTime from = shifts.get(i - 1).to();
            LocalTime to = shifts.get(i).from();
            if (from.isBefore(to)) {
                breaks.add(new Window(from, to));
            }
        }
        return breaks;
    }

    public LocalTime startsAt() {
        return shifts.get(0).from();
    }

    /** End of the usual shift. */
    public LocalTime knockOff() {
        return shifts.get(shifts.size() - 1).to();
    }
}
