package org.shedboard.hours;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.Stretch.Use;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.hours.Tally.VisitHours;

/**
 * One person's day, minute by minute.
 *
 * @param first its first minute, counted from 1970
 * @param minutes each of its minutes; empty where they were not in the shop
 */
record CountedDay(String personId, LocalDate date, long first, List<Optional<Minute>> minutes, int rounding) {
    /**
     * What a minute in the shop was.
     *
     * @param on what it counts for; empty where nothing was clocked, and on a break that nobody clocked
     * @param isLent whether it was worked at another machine
     */
    record Minute(Use use, Optional<Activity> on, boolean isLent) {}

    boolean isEmpty() {
        return minutes.stream().allMatch(Optional::isEmpty);
    }

    PersonHours hours() {
        return hours(personId, List.of(this));
    }

    /** Sums over days of one person, as the tally would say them. */
    static PersonHours hours(String personId, List<CountedDay> days) {
        Map<Use, Integer> uses = new EnumMap<>(Use.class);
        Map<OnStay, Integer> onStays = new HashMap<>();
        Map<OtherWork.Kind, Integer> other = new EnumMap<>(OtherWork.Kind.class);
        int present = 0;
        for (CountedDay day : days) {
            for (Optional<Minute> minute : day.minutes) {
                if (minute.isPresent()) {
                    present++;
                    uses.merge(minute.get().use(), 1, Integer::sum);
                    add(minute.get().on(), onStays, other);
                }
            }
        }
        int toSay = uses.getOrDefault(Use.REST_TO_SAY, 0);
        int free = uses.getOrDefault(Use.FREE, 0);
        return new PersonHours(
                personId,
                present - free,
                onStays,
                other,
                uses.getOrDefault(Use.REST, 0) + toSay,
                toSay,
                free,
                uses.getOrDefault(Use.UNACCOUNTED, 0),
                days.stream().mapToInt(CountedDay::rounding).sum());
    }

    private static void add(Optional<Activity> on, Map<OnStay, Integer> onStays, Map<OtherWork.Kind, Integer> other) {
        if (on.isPresent() && on.get() instanceof OnStay stay) {
            onStays.merge(stay, 1, Integer::sum);
        } else if (on.isPresent() && on.get() instanceof OtherWork work) {
            other.merge(work.kind(), 1, Integer::sum);
        }
    }

    /** What was worked on one visit in these days. */
    static VisitHours visit(String visitId, List<CountedDay> days) {
        Map<OnStay, Integer> onStays = new HashMap<>();
        Map<String, Integer> people = new HashMap<>();
        int lent = 0;
        for (CountedDay day : days) {
            for (Optional<Minute> minute : day.minutes) {
                if (minute.isPresent()
                        && minute.get().on().orElse(null) instanceof OnStay stay
                        && stay.visitId().equals(visitId)) {
                    onStays.merge(stay, 1, Integer::sum);
                    people.merge(day.personId, 1, Integer::sum);
                    lent += minute.get().isLent() ? 1 : 0;
                }
            }
        }
        return new VisitHours(visitId, onStays, people, lent);
    }
}
