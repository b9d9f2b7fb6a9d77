package org.shedboard.ahead;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;

/**
 * One working day to come.
 *
 * @param people hands-on minutes by skill, of people
 * @param places minutes of stays by where they can be, of places
 * @param carried hands-on minutes in it that did not fit on the days before
 * @param bays the places of each kind
 * @param holders the people who have each skill
 * @param visitIds ids of the visits that begin on it
 */
public record DayAhead(
        LocalDate date,
        Side<Skill> people,
        Side<Bay> places,
        int carried,
        Map<PlaceKind, Set<String>> bays,
        Map<Skill, Set<String>> holders,
        List<String> visitIds) {
    /** A day with less left than this for a skill or a kind of place takes no more of it. An invented figure. */
    public static final int LEAST_MINUTES = 15;

    public DayAhead {
        bays = Map.copyOf(bays);
        holders = Map.copyOf(holders);
        visitIds = List.copyOf(visitIds);
    }

    public DayAhead plus(Demand demand) {
        return new DayAhead(
                date, people.plus(demand.people()), places.plus(demand.places()), carried, bays, holders, visitIds);
    }

    /** Minutes that the people with a skill have. */
    public int open(Skill skill) {
        return people.open(holders.get(skill));
    }

    public int open(PlaceKind kind) {
        return places.open(bays.get(kind));
    }

    /** Whether no more work of a skill fits; never where nobody has it. */
    public boolean isFull(Skill skill) {
        return !holders.get(skill).isEmpty() && people.room(holders.get(skill)) < LEAST_MINUTES;
    }

    public boolean isFull(PlaceKind kind) {
        return !bays.get(kind).isEmpty() && places.room(bays.get(kind)) < LEAST_MINUTES;
    }

    /** Whether all of it fits beside what is booked. */
    public boolean fits(Demand demand) {
        return peopleOver(demand).isEmpty() && placesOver(demand).isEmpty();
    }

    /** The people who would have more than they can do. */
    public List<Squeeze<Skill>> peopleOver(Demand demand) {
        return people.over(demand.people());
    }

    /** The places that would have more than they can take. */
    public List<Squeeze<Bay>> placesOver(Demand demand) {
        return places.over(demand.places());
    }

    /**
     * Minutes booked in places of each kind. What can stand in several kinds is counted where there is room for it, in the order in
     * which they will do; what has room in none, in the first.
     */
    public Map<PlaceKind, Integer> byKind() {
        Map<PlaceKind, Integer> minutes = new EnumMap<>(PlaceKind.class);
        for (PlaceKind kind : PlaceKind.values()) {
            minutes.put(kind, 0);
        }
        byChoice(1).forEach(claim -> minutes.merge(claim.what().kinds().get(0), claim.minutes(), Integer::sum));
        byChoice(2).forEach(claim -> spread(claim, minutes));
        return minutes;
    }

    private List<Claim<Bay>> byChoice(int kinds) {
        return places.claims().stream()
                .filter(claim -> Math.min(2, claim.what().kinds().size()) == kinds)
                .collect(Collectors.toList());
    }

    private void spread(Claim<Bay> claim, Map<PlaceKind, Integer> minutes) {
        int left = claim.minutes();
        for (PlaceKind kind : claim.what().kinds()) {
            int fits = Math.min(left, Math.max(0, open(kind) - minutes.get(kind)));
            minutes.merge(kind, fits, Integer::sum);
            left -= fits;
        }
        minutes.merge(claim.what().kinds().get(0), left, Integer::sum);
    }
}
