package org.shedboard.hours;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Hours of one or more days, in whole minutes: sums over {@link PersonDay}s, turned into hours only where they are shown.
 *
 * @param days each person's days, person by person, in order of date
 * @param unsettled entries that were open at a midnight and still are; nothing of them is counted
 * @param overlapped entries of which minutes went to another one that began later
 */
public record Tally(List<PersonDay> days, List<ClockEntry> unsettled, List<ClockEntry> overlapped) {
    public Tally {
        days = List.copyOf(days);
        unsettled = List.copyOf(unsettled);
        overlapped = List.copyOf(overlapped);
    }

    /**
     * One person's minutes. Attended are those on machines, on other work, on breaks that are time worked, and those unaccounted
     * for; free ones lie outside.
     *
     * @param onStays minutes on machines, by stay and task
     * @param rounding minutes that rounding gave for pay; negative where it took some
     */
    public record PersonHours(
            String personId,
            int attended,
            Map<Activity.OnStay, Integer> onStays,
            Map<Activity.OtherWork.Kind, Integer> other,
            int rests,
            int restsToSay,
            int free,
            int unaccounted,
            int rounding) {
        public PersonHours {
            onStays = new LinkedHashMap<>(onStays);
            other = new LinkedHashMap<>(other);
        }

        /** What one day comes to. */
        public static PersonHours of(PersonDay day) {
            return personHours(day.personId(), List.of(day));
        }

        public int onMachines() {
            return sum(onStays);
        }

        public int otherMinutes() {
            return sum(other);
        }

        public int paid() {
            return attended + rounding;
        }
    }

    /**
     * One visit's worked minutes.
     *
     * @param onStays by stay and task
     * @param people by person
     * @param lent minutes among them that were worked at another machine, each time too few to move
     */
    public record VisitHours(
            String visitId, Map<Activity.OnStay, Integer> onStays, Map<String, Integer> people, int lent) {
        public VisitHours {
            onStays = new LinkedHashMap<>(onStays);
            people = new LinkedHashMap<>(people);
        }

        public int worked() {
            return sum(onStays);
        }
    }

    private static int sum(Map<?, Integer> minutes) {
        return minutes.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Each person's sums, in the order of {@link #days}. */
    public List<PersonHours> people() {
        Map<String, List<PersonDay>> byPerson = new LinkedHashMap<>();
        days.forEach(day -> byPerson.computeIfAbsent(day.personId(), id -> new ArrayList<>())
                .add(day));
        return byPerson.entrySet().stream()
                .map(entry -> personHours(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static PersonHours personHours(String personId, List<PersonDay> days) {
        Map<Activity.OnStay, Integer> onStays = new LinkedHashMap<>();
        Map<Activity.OtherWork.Kind, Integer> other = new LinkedHashMap<>();
        days.stream().flatMap(day -> day.stretches().stream()).forEach(stretch -> {
            if (stretch.on().orElse(null) instanceof Activity.OnStay stay) {
                onStays.merge(stay, stretch.minutes(), Integer::sum);
            } else if (stretch.on().orElse(null) instanceof Activity.OtherWork work) {
                other.merge(work.kind(), stretch.minutes(), Integer::sum);
            }
        });
        return new PersonHours(
                personId,
                sum(days, Stretch.Use::isAttended),
                onStays,
                other,
                sum(days, Stretch.Use::isRest),
                sum(days, use -> use == Stretch.Use.REST_TO_SAY),
                sum(days, use -> use == Stretch.Use.FREE),
                sum(days, use -> use == Stretch.Use.UNACCOUNTED),
                days.stream().mapToInt(PersonDay::rounding).sum());
    }

    private static int sum(List<PersonDay> days, Predicate<Stretch.Use> which) {
        return days.stream().mapToInt(day -> day.minutes(which)).sum();
    }

    /** What was worked on each visit, person by person in the order in which they came to them. */
    public List<VisitHours> visits() {
        Map<String, Map<Activity.OnStay, Integer>> onStays = new LinkedHashMap<>();
        Map<String, Map<String, Integer>> people = new LinkedHashMap<>();
        Map<String, Integer> lent = new LinkedHashMap<>();
        for (PersonDay day : days) {
            for (Stretch stretch : day.stretches()) {
                if (stretch.on().orElse(null) instanceof Activity.OnStay stay) {
                    add(onStays, stay.visitId(), stay, stretch.minutes());
                    add(people, stay.visitId(), day.personId(), stretch.minutes());
                    lent.merge(stay.visitId(), stretch.isLent() ? stretch.minutes() : 0, Integer::sum);
                }
            }
        }
        return onStays.keySet().stream()
                .map(id -> new VisitHours(id, onStays.get(id), people.get(id), lent.get(id)))
                .toList();
    }

    private static <K> void add(Map<String, Map<K, Integer>> all, String id, K key, int minutes) {
        all.computeIfAbsent(id, each -> new LinkedHashMap<>()).merge(key, minutes, Integer::sum);
    }

    public int attended() {
        return sum(days, Stretch.Use::isAttended);
    }

    public int onMachines() {
        return sum(days, use -> use == Stretch.Use.ON_MACHINE);
    }

    public int minutes(Predicate<Stretch.Use> which) {
        return sum(days, which);
    }

    public int rounding() {
        return days.stream().mapToInt(PersonDay::rounding).sum();
    }
}
