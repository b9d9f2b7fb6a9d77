package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.ahead.DayAhead;
import org.shedboard.ahead.Demand;
import org.shedboard.ahead.Load;
import org.shedboard.ahead.Side;
import org.shedboard.ahead.Weeks;
import org.shedboard.pack.Span;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Visit;

/**
 * The weeks ahead of a day. People have their usual hours less breaks and errands, today those they said at opening; minutes are the
 * catalogue's, so that somebody slow has fewer of them. A place is open while anybody is there.
 */
public final class WeeksAhead {
    private static final int WEEKS = 4;
    private static final int DAYS = 7 * WEEKS;

    private final Day day;
    private final Instant now;
    private final int days;
    private final Roster roster;

    private WeeksAhead(Day day, Instant now, int days) {
        this.day = day;
        this.now = now;
        this.days = days;
        this.roster = new Roster(day, days);
    }

    /** The next four weeks. */
    public static Weeks of(Day day, Instant now) {
        return new WeeksAhead(day, now, DAYS).weeks();
    }

    /** The next four weeks with the work that is due in them and not booked; it goes through all machines of the books. */
    public static Weeks withDue(Day day, Instant now) {
        Weeks booked = of(day, now);
        return booked.with(DueWork.over(booked, RingList.of(day, now, WEEKS)));
    }

    /** The next weeks until four weeks after a date, the date of a booking. */
    static Weeks beyond(LocalDate date, Day day, Instant now) {
        int until = (int) Math.max(0, ChronoUnit.DAYS.between(day.date(), date));
        return new WeeksAhead(day, now, until + DAYS).weeks();
    }

    private Weeks weeks() {
        List<Demand> demands = day.visits().stream()
                .filter(visit -> visit.state().isOpen())
                .map(visit -> Demands.of(day, visit, now))
                .toList();
        return Weeks.of(empty(), demands);
    }

    private List<DayAhead> empty() {
        List<DayAhead> empty = new ArrayList<>();
        for (LocalDate date : dates()) {
            empty.add(new DayAhead(
                    date,
                    Side.of(peopleOn(date)),
                    Side.of(placesOn(date)),
                    0,
                    placesByKind(),
                    peopleBySkill(),
                    List.of(),
                    Load.NONE));
        }
        return empty;
    }

    /** The shop's working days, and today where it is open all the same. */
    private List<LocalDate> dates() {
        return day.date()
                .datesUntil(day.date().plusDays(days))
                .filter(date -> day.shop().workdays().contains(date.getDayOfWeek())
                        || date.equals(day.date()) && day.isOpened())
                .toList();
    }

    private Map<PlaceKind, Set<String>> placesByKind() {
        Map<PlaceKind, Set<String>> places = new EnumMap<>(PlaceKind.class);
        for (PlaceKind kind : PlaceKind.values()) {
            places.put(
                    kind,
                    day.shop().places().stream()
                            .filter(place -> place.kind() == kind)
                            .map(Place::id)
                            .collect(Collectors.toCollection(LinkedHashSet::new)));
        }
        return places;
    }

    private Map<Skill, Set<String>> peopleBySkill() {
        Map<Skill, Set<String>> people = new EnumMap<>(Skill.class);
        for (Skill skill : Skill.values()) {
            people.put(skill, Demands.holders(day, skill));
        }
        return people;
    }

    private Map<String, Integer> peopleOn(LocalDate date) {
        Map<String, Integer> open = new LinkedHashMap<>();
        for (Person person : day.shop().people()) {
            int minutes = spansOn(date, person).stream()
                    .mapToInt(span -> span.to() - span.from())
                    .sum();
            open.put(person.id(), minutes * 100 / person.pacePercent());
        }
        return open;
    }

    /** The person's hours on a date that are still to come. */
    private List<Span> spansOn(LocalDate date, Person person) {
        int from = Math.max(day.minuteOf(now), midnight(date));
        int to = Math.max(from, midnight(date.plusDays(1)));
        return roster.shiftsOf(person).stream()
                .filter(span -> span.from() < to && span.to() > from)
                .map(span -> new Span(Math.max(span.from(), from), Math.min(span.to(), to)))
                .toList();
    }

    private int midnight(LocalDate date) {
        return day.minuteOf(date.atStartOfDay(day.zone()).toInstant());
    }

    private Map<String, Integer> placesOn(LocalDate date) {
        List<Span> manned = joined(day.shop().people().stream()
                .flatMap(person -> spansOn(date, person).stream())
                .toList());
        Map<String, Integer> open = new LinkedHashMap<>();
        for (Place place : day.shop().places()) {
            int from = takenUntil(place);
            open.put(
                    place.id(),
                    isShut(date, place)
                            ? 0
                            : manned.stream()
                                    .mapToInt(span -> Math.max(0, span.to() - Math.max(from, span.from())))
                                    .sum());
        }
        return open;
    }

    /** A hoist that was not found sound today is shut today; on other days it is as good as any. */
    private boolean isShut(LocalDate date, Place place) {
        return place.isHoist()
                && date.equals(day.date())
                && day.opening().filter(opened -> !opened.isChecked(place.id())).isPresent();
    }

    /** The minute until which a machine that waits keeps a place from all others; 0 where none does. */
    private int takenUntil(Place place) {
        return day.standingIn(place.id()).stream()
                .flatMap((Visit visit) -> visit.hold().stream())
                .mapToInt(hold -> day.minuteOf(hold.until()))
                .findFirst()
                .orElse(0);
    }

    /** The minutes that lie in any of these. */
    private static List<Span> joined(List<Span> spans) {
        List<Span> joined = new ArrayList<>();
        for (Span span :
                spans.stream().sorted(Comparator.comparingInt(Span::from)).toList()) {
            Span last = joined.isEmpty() ? new Span(0, 0) : joined.get(joined.size() - 1);
            if (!joined.isEmpty() && span.from() <= last.to()) {
                joined.set(joined.size() - 1, new Span(last.from(), Math.max(last.to(), span.to())));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }
}
