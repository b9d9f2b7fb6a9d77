package org.shedboard.hours;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shedboard.shop.Step;

/**
 * The hours of a day, in whole minutes, per person and per visit.
 *
 * <p>A moment counts from the minute it falls in, so that entries that touch share no minute and lose none. Unpaid breaks lie
 * outside attended time, and an entry that runs through one is cut by it. A person who has clock entries outside the presence
 * that was noted was present for them. Attended minutes are those on machines, those on other work and those unaccounted for.
 */
public record Tally(List<PersonHours> people, List<VisitHours> visits) {
    /** One person's minutes. */
    public record PersonHours(
            String personId, int attended, int onMachines, Map<Activity.OtherWork.Kind, Integer> other) {
        public PersonHours {
            other = Map.copyOf(other);
        }

        public int otherMinutes() {
            return other.values().stream().mapToInt(Integer::intValue).sum();
        }

        public int unaccounted() {
            return attended - onMachines - otherMinutes();
        }
    }

    /** One visit's worked minutes. */
    public record VisitHours(String visitId, int worked, int cleaning, List<String> people) {
        public VisitHours {
            people = List.copyOf(people);
        }
    }

    public Tally {
        people = List.copyOf(people);
        visits = List.copyOf(visits);
    }

    /**
     * The tally of these entries.
     *
     * @param now the end of entries that are still open
     */
    public static Tally of(List<Presence> presences, List<ClockEntry> entries, Instant now) {
        Count count = new Count(now);
        List<PersonHours> people = new ArrayList<>();
        for (Presence presence : presences) {
            List<ClockEntry> own = entries.stream()
                    .filter(entry -> entry.personId().equals(presence.personId()))
                    .sorted(Comparator.comparing(ClockEntry::from))
                    .toList();
            people.add(count.person(presence, own));
        }
        return new Tally(people, count.visits());
    }

    public int attended() {
        return people.stream().mapToInt(PersonHours::attended).sum();
    }

    public int onMachines() {
        return people.stream().mapToInt(PersonHours::onMachines).sum();
    }

    /** The count while it is going on. */
    private static final class Count {
        private final Instant now;
        private final Map<String, Integer> worked = new LinkedHashMap<>();
        private final Map<String, Integer> cleaning = new LinkedHashMap<>();
        private final Map<String, Set<String>> workers = new LinkedHashMap<>();

        Count(Instant now) {
            this.now = now;
        }

        PersonHours person(Presence presence, List<ClockEntry> entries) {
            int onMachines = 0;
            Map<Activity.OtherWork.Kind, Integer> other = new EnumMap<>(Activity.OtherWork.Kind.class);
            long from = minute(presence.from());
            long to = minute(presence.to());
            for (ClockEntry entry : entries) {
                int minutes = minutes(presence, minute(entry.from()), minute(entry.toOr(now)));
                from = Math.min(from, minute(entry.from()));
                to = Math.max(to, minute(entry.toOr(now)));
                if (entry.activity() instanceof Activity.OnStay stay) {
                    onMachines += minutes;
                    add(stay, entry.personId(), minutes);
                } else if (entry.activity() instanceof Activity.OtherWork work) {
                    other.merge(work.kind(), minutes, Integer::sum);
                }
            }
            return new PersonHours(presence.personId(), minutes(presence, from, to), onMachines, other);
        }

        private void add(Activity.OnStay stay, String personId, int minutes) {
            worked.merge(stay.visitId(), minutes, Integer::sum);
            cleaning.merge(stay.visitId(), stay.step() == Step.WASH ? minutes : 0, Integer::sum);
            workers.computeIfAbsent(stay.visitId(), id -> new LinkedHashSet<>()).add(personId);
        }

        List<VisitHours> visits() {
            return worked.keySet().stream()
                    .map(id -> new VisitHours(id, worked.get(id), cleaning.get(id), List.copyOf(workers.get(id))))
                    .toList();
        }

        private static int minutes(Presence presence, long from, long to) {
            long minutes = Math.max(0, to - from);
            for (Presence.Break pause : presence.breaks()) {
                minutes -= Math.max(0, Math.min(to, minute(pause.to())) - Math.max(from, minute(pause.from())));
            }
            return (int) minutes;
        }

        private static long minute(Instant at) {
            return Math.floorDiv(at.getEpochSecond(), 60L);
        }
    }
}
