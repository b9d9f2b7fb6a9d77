package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.ahead.Bay;
import org.shedboard.ahead.DayAhead;
import org.shedboard.ahead.Demand;
import org.shedboard.ahead.Squeeze;
import org.shedboard.ahead.Weeks;
import org.shedboard.shop.Skill;

/** Whether there is room for a booking on its day, and where there is some otherwise. */
final class FullDay {
    private final Day day;
    private final Instant now;

    FullDay(Day day, Instant now) {
        this.day = day;
        this.now = now;
    }

    /** What the day would be full of with this machine on it; nothing for one that is here or could not be booked like this. */
    List<DoorNote> notes(Act.TakeIn wanted) {
        Optional<LocalDate> date = wanted.expected().map(at -> LocalDate.ofInstant(at, day.zone()));
        return date.isPresent() && Acts.apply(day, wanted, now) instanceof Outcome.Done done
                ? notes(
                        date.get(),
                        Demands.of(
                                done.day(),
                                done.day().expectVisit(done.subject().orElseThrow()),
                                now))
                : List.of();
    }

    private List<DoorNote> notes(LocalDate date, Demand demand) {
        Weeks weeks = WeeksAhead.beyond(date, day, now);
        List<DoorNote> notes = new ArrayList<>(weeks.find(date)
                .map(booked -> full(booked, demand))
                .orElse(List.of(DoorNote.of(DoorNote.Kind.DAY_SHUT, Clocks.sayDate(date)))));
        if (!notes.isEmpty()) {
            notes.add(weeks.nextWithRoom(date, demand)
                    .map(next -> DoorNote.of(DoorNote.Kind.ROOM_ON, Clocks.sayDate(next.date())))
                    .orElse(DoorNote.of(DoorNote.Kind.NO_ROOM, Clocks.sayDate(date))));
        }
        return notes;
    }

    private static List<DoorNote> full(DayAhead booked, Demand demand) {
        List<DoorNote> notes = new ArrayList<>();
        booked.placesOver(demand)
                .forEach(over -> notes.add(full(DoorNote.Kind.PLACES_FULL, booked, namesOfPlaces(over), over)));
        booked.peopleOver(demand)
                .forEach(over -> notes.add(
                        over.isEverybody()
                                ? full(DoorNote.Kind.EVERYBODY_FULL, booked, "", over)
                                : full(DoorNote.Kind.PEOPLE_FULL, booked, namesOfSkills(over), over)));
        return notes;
    }

    private static DoorNote full(DoorNote.Kind kind, DayAhead day, String what, Squeeze<?> over) {
        return DoorNote.of(
                kind, Clocks.sayDate(day.date()), Figures.hours(over.booked()), Figures.hours(over.open()), what);
    }

    private static String namesOfPlaces(Squeeze<Bay> over) {
        return over.what().stream()
                .flatMap(bay -> bay.only().isEmpty() ? bay.kinds().stream().map(Problems::kind) : bay.only().stream())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String namesOfSkills(Squeeze<Skill> over) {
        return over.what().stream().map(Problems::skill).collect(Collectors.joining(", "));
    }
}
