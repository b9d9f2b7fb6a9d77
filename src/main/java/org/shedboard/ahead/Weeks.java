package org.shedboard.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.shop.Skill;

/** The working days ahead, the first of them today where it is one, each with what is booked on it and what came over to it. */
public record Weeks(List<DayAhead> days) {
    public Weeks {
        days = List.copyOf(days);
    }

    /**
     * Lays the demands on the days: each on its own date, or the first working day after it; what does not fit on a day goes over to
     * the next.
     *
     * @param empty the days with nothing on them, in order
     */
    public static Weeks of(List<DayAhead> empty, List<Demand> demands) {
        List<DayAhead> days = new ArrayList<>();
        List<Claim<Skill>> people = List.of();
        List<Claim<Bay>> places = List.of();
        LocalDate after = LocalDate.MIN;
        for (DayAhead day : empty) {
            DayAhead laid = laid(day, demands, after, people, places);
            people = laid.people().rest();
            places = laid.places().rest();
            after = day.date();
            days.add(laid);
        }
        return new Weeks(days);
    }

    private static DayAhead laid(
            DayAhead day, List<Demand> demands, LocalDate after, List<Claim<Skill>> people, List<Claim<Bay>> places) {
        List<Demand> own = demands.stream()
                .filter(demand -> demand.date().isAfter(after) && !demand.date().isAfter(day.date()))
                .toList();
        DayAhead begun = new DayAhead(
                day.date(),
                day.people().plus(people),
                day.places().plus(places),
                people.stream().mapToInt(Claim::minutes).sum(),
                day.bays(),
                day.holders(),
                own.stream().map(Demand::visitId).toList());
        for (Demand demand : own) {
            begun = begun.plus(demand);
        }
        return begun;
    }

    public Optional<DayAhead> find(LocalDate date) {
        return days.stream().filter(day -> day.date().equals(date)).findFirst();
    }

    /** The first day after this date on which the whole of it fits; empty where there is none. */
    public Optional<DayAhead> nextWithRoom(LocalDate date, Demand demand) {
        return days.stream()
                .filter(day -> day.date().isAfter(date))
                .filter(day -> day.fits(demand))
                .findFirst();
    }
}
