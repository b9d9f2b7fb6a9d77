package org.shedboard.files;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.day.Day;
import org.shedboard.files.CalendarFile.Event;
import org.shedboard.shop.Line;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.words.Words;

/**
 * When machines were promised and when booked ones are expected, as events for a calendar. Calendars are looked at by many, so that
 * no telephone number is told, nor what was typed of whom was spoken to.
 */
public final class VisitCalendar {
    /** An event that takes no time is hardly seen in a calendar; it begins at the moment that was said. */
    private static final Duration SHOWN = Duration.ofMinutes(15);

    private final Day day;
    private final Instant now;

    private VisitCalendar(Day day, Instant now) {
        this.day = day;
        this.now = now;
    }

    /** All that is still to come of the visits of a day, whatever the date, in order; what is overdue is still to come. */
    public static List<Event> of(Day day, Instant now) {
        VisitCalendar calendar = new VisitCalendar(day, now);
        List<Event> events = new ArrayList<>();
        for (Visit visit : day.visits()) {
            if (visit.state() == VisitState.BOOKED) {
                events.add(calendar.arrival(visit));
            }
            if (visit.state().isOpen()) {
                visit.promise().ifPresent(promise -> events.add(calendar.ready(visit, promise)));
            }
        }
        events.sort(Comparator.comparing(Event::from).thenComparing(Event::uid));
        return events;
    }

    private Event ready(Visit visit, Promise promise) {
        String told = Words.say("calendar.told_by", day.nameOf(promise.by()));
        return event(
                visit, "promise", promise.at(), Words.say("calendar.ready", name(visit)), " " + told, promise.saidAt());
    }

    /** Nobody wrote down when it was booked, so that it is told as of now: of two files the newer one is then believed. */
    private Event arrival(Visit visit) {
        String summary = Words.say("calendar.comes", name(visit));
        return event(visit, "arrival", visit.intake().arrives(), summary, "", now);
    }

    /** The identification stays the same however often the time is changed, so that the event is moved and not doubled. */
    private Event event(Visit visit, String kind, Instant at, String summary, String more, Instant changed) {
        String uid = visit.id() + "-" + kind + "@shedboard";
        return new Event(uid, at, Optional.of(at.plus(SHOWN)), summary, about(visit) + more, changed);
    }

    private String name(Visit visit) {
        String owner = day.ownerOf(visit).name();
        return visit.tag().isPresent() ? Words.say("calendar.tag", visit.tag().getAsInt(), owner) : owner;
    }

    private String about(Visit visit) {
        String lines = visit.lines().stream().map(Line::name).collect(Collectors.joining(", "));
        return Words.say("calendar.about", day.machineOf(visit).label(), lines);
    }
}
