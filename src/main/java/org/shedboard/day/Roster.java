package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.shedboard.hours.Errand;
import org.shedboard.pack.Span;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Person;
import org.shedboard.shop.Visit;
import org.shedboard.shop.Window;

/**
 * Who is available when, in minutes of the day's packing problem.
 *
 * <p>Today goes by what was said at opening: nobody who is not here, nobody longer than they stay. Days to come go by the usual
 * hours of the shop's workdays. Who is planned for an errand is away for it.
 */
public final class Roster {
    static final int MINUTES_A_DAY = 24 * 60;

    private static final int WEEK = 7;

    private final Day day;
    private final int days;

    public Roster(Day day) {
        this(day, weekOf(day));
    }

    /** @param days how many days are looked at, today included */
    Roster(Day day, int days) {
        this.day = day;
        this.days = days;
    }

    /** As far as the plan looks ahead, or until a week after that minute if that is further, but no further than so many days. */
    static Roster reaching(Day day, int minute, int furthest) {
        int until = Math.floorDiv(minute, MINUTES_A_DAY) + WEEK;
        return new Roster(day, Math.max(weekOf(day), Math.min(until, furthest)));
    }

    /** With a week from the minute at which the last of the parts is here that work waits for. */
    Roster withPartsBy(int minute) {
        return new Roster(day, Math.max(days, WEEK + minute / MINUTES_A_DAY));
    }

    /** Days that are looked at, today included. */
    int days() {
        return days;
    }

    /**
     * Days the plan looks ahead, today included: a week, counted from the end of the longest hold of a machine that is half done,
     * since what has begun must be finished within the plan.
     */
    private static int weekOf(Day day) {
        int longest = day.visits().stream()
                .filter(Visit::hasBegun)
                .flatMap(visit -> visit.hold().stream())
                .mapToInt(hold -> day.minuteOf(hold.until()) / MINUTES_A_DAY)
                .max()
                .orElse(0);
        return WEEK + Math.max(0, longest);
    }

    /** Usual hours, today and on the days to come. */
    public List<Span> shiftsOf(Person person) {
        return spans(person, person.shifts());
    }

    /** Hours beyond those in which this person may be asked to work. */
    public List<Span> overtimeOf(Person person) {
        return spans(person, person.overtime());
    }

    /** Minutes of a person's shift between two moments: breaks and the hours after knock-off do not count. */
    int shiftMinutes(Person person, Instant from, Instant to) {
        Span asked = new Span(day.minuteOf(from), Math.max(day.minuteOf(from), day.minuteOf(to)));
        return shiftsOf(person).stream()
                .mapToInt(shift -> Math.max(0, Math.min(shift.to(), asked.to()) - Math.max(shift.from(), asked.from())))
                .sum();
    }

    private List<Span> spans(Person person, List<Window> windows) {
        List<Span> spans = new ArrayList<>();
        for (int ahead = 0; ahead < days; ahead++) {
            LocalDate date = day.date().plusDays(ahead);
            Span presence = ahead == 0 ? presenceToday(person) : presenceOn(date);
            for (Window window : windows) {
                int from = Math.max(presence.from(), minuteAt(date, window.from()));
                int to = Math.min(presence.to(), minuteAt(date, window.to()));
                addAround(spans, person, from, to);
            }
        }
        return spans;
    }

    /** The time from one minute to another, less the errands the person is planned for in it. */
    private void addAround(List<Span> spans, Person person, int begin, int end) {
        int from = begin;
        for (Errand errand : day.errandsOf(person.id())) {
            int leaves = Math.min(end, day.minuteOf(errand.from()));
            if (from < leaves) {
                spans.add(new Span(from, leaves));
            }
            from = Math.max(from, Math.min(end, day.minuteOf(errand.until())));
        }
        if (from < end) {
            spans.add(new Span(from, end));
        }
    }

    private Span presenceToday(Person person) {
        if (day.opening().isEmpty()) {
            return presenceOn(day.date());
        }
        return day.opening()
                .get()
                .attendanceOf(person.id())
                .map(this::presenceOf)
                .orElse(new Span(0, 0));
    }

    private Span presenceOf(Attendance attendance) {
        int from = Math.max(0, day.minuteOf(attendance.from()));
        int to = day.minuteOf(attendance.left().orElse(attendance.until()));
        return new Span(from, Math.max(from, to));
    }

    private Span presenceOn(LocalDate date) {
        int from = day.minuteOf(date.atStartOfDay(day.zone()).toInstant());
        int to = day.minuteOf(date.plusDays(1).atStartOfDay(day.zone()).toInstant());
        return day.shop().workdays().contains(date.getDayOfWeek()) ? new Span(from, to) : new Span(from, from);
    }

    private int minuteAt(LocalDate date, LocalTime time) {
        return day.minuteOf(date.atTime(time).atZone(day.zone()).toInstant());
    }
}
