package org.shedboard.board;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;

/**
 * The day being opened: first a row for each person, then one for each hoist.
 *
 * @param by id of the person who opens it
 */
public record OpenForm(List<Who> people, List<Hoist> hoists, int row, String by) {
    /** A person, and whether they are here until when. */
    public record Who(String personId, boolean here, Instant from, Instant until) {}

    /** A hoist: checked by somebody, locked out for a reason, or not looked at yet. */
    public record Hoist(String placeId, Optional<String> checkedBy, Optional<String> lockedOut) {}

    public OpenForm {
        people = List.copyOf(people);
        hoists = List.copyOf(hoists);
    }

    /** Everybody here at their usual hours, no hoist checked. */
    static OpenForm of(Day day) {
        List<Who> people = day.shop().people().stream()
                .map(person -> new Who(person.id(), true, at(day, person.startsAt()), at(day, person.knockOff())))
                .toList();
        List<Hoist> hoists = day.shop().hoists().stream()
                .map(hoist -> new Hoist(hoist.id(), Optional.empty(), Optional.empty()))
                .toList();
        return new OpenForm(people, hoists, 0, day.shop().people().get(0).id());
    }

    private static Instant at(Day day, LocalTime time) {
        return day.date().atTime(time).atZone(day.zone()).toInstant();
    }

    int rows() {
        return people.size() + hoists.size();
    }

    boolean isOnPerson() {
        return row < people.size();
    }

    Who person() {
        return people.get(row);
    }

    Hoist hoist() {
        return hoists.get(row - people.size());
    }

    OpenForm on(int next) {
        return new OpenForm(people, hoists, Math.floorMod(next, rows()), by);
    }

    OpenForm with(Who who) {
        List<Who> next = new ArrayList<>(people);
        next.set(row, who);
        return new OpenForm(next, hoists, row, by);
    }

    OpenForm with(Hoist hoist) {
        List<Hoist> next = new ArrayList<>(hoists);
        next.set(row - people.size(), hoist);
        return new OpenForm(people, next, row, by);
    }

    OpenForm openedBy(String personId) {
        return new OpenForm(people, hoists, row, personId);
    }

    Act.OpenDay act() {
        List<Act.OpenDay.Here> here = people.stream()
                .filter(Who::here)
                .map(who -> new Act.OpenDay.Here(who.personId(), who.from(), who.until()))
                .toList();
        List<Act.OpenDay.Checked> checks = new ArrayList<>();
        for (Hoist hoist : hoists) {
            if (hoist.checkedBy().isPresent() || hoist.lockedOut().isPresent()) {
                checks.add(new Act.OpenDay.Checked(
                        hoist.placeId(), hoist.checkedBy().orElse(by), hoist.lockedOut()));
            }
        }
        return new Act.OpenDay(by, here, checks);
    }

    Person personOf(Day day) {
        return day.shop().expectPerson(person().personId());
    }

    Place placeOf(Day day) {
        return day.shop().expectPlace(hoist().placeId());
    }
}
