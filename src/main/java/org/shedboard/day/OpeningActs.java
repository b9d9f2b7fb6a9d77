package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.HoistCheck;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Place;
import org.shedboard.words.When;

/** Opening and closing the day, and what changes of its opening in between. */
final class OpeningActs {
    private final Draft draft;
    private final Instant now;

    OpeningActs(Draft draft, Instant now) {
        this.draft = draft;
        this.now = now;
    }

    Outcome open(Act.OpenDay open) {
        Day day = draft.day();
        Optional<Refusal> no = refusal(open);
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        List<Attendance> attendances = open.here().stream()
                .map(here -> new Attendance(here.personId(), here.from(), here.until(), Optional.empty()))
                .toList();
        List<HoistCheck> checks = open.checks().stream().map(this::check).toList();
        Opening opening = new Opening(day.date(), now, open.by(), attendances, checks, Optional.empty());
        draft.put(opening);
        day.shop().hoists().stream()
                .map(Place::id)
                .filter(hoist -> !opening.isChecked(hoist))
                .forEach(this::leaveHoist);
        return draft.done();
    }

    private Optional<Refusal> refusal(Act.OpenDay open) {
        Day day = draft.day();
        if (day.isOpened()) {
            return Optional.of(Refusal.of(day.isClosed() ? "day_already_closed" : "day_already_open", day.date()));
        }
        if (open.here().isEmpty()) {
            return Optional.of(Refusal.of("nobody_here"));
        }
        if (day.shop().findPerson(open.by()).isEmpty()) {
            return Optional.of(Refusal.of("person_unknown", open.by()));
        }
        for (Act.OpenDay.Here here : open.here()) {
            if (day.shop().findPerson(here.personId()).isEmpty()) {
                return Optional.of(Refusal.of("person_unknown", here.personId()));
            }
            if (!here.from().isBefore(here.until())) {
                return Optional.of(Refusal.of(
                        "stays_not_at_all",
                        day.shop().expectPerson(here.personId()).name()));
            }
        }
        return open.checks().stream().flatMap(check -> refusal(check).stream()).findFirst();
    }

    Outcome checkHoist(Act.CheckHoist act) {
        Optional<Refusal> no = notRunning().or(() -> refusal(act.checked()));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Opening opening = draft.day().opening().get();
        HoistCheck check = check(act.checked());
        if (!check.isSound()) {
            leaveHoist(check.placeId());
        }
        draft.put(opening.plus(check));
        return draft.done();
    }

    /** Nobody goes on working on a hoist that is locked out, or was not checked. */
    private void leaveHoist(String placeId) {
        FloorActs floor = new FloorActs(draft, now);
        draft.day().standingIn(placeId).stream()
                .flatMap(visit -> visit.tasks().stream())
                .filter(task -> task.progress().isRunning())
                .forEach(task -> floor.leaveWork(task.progress().person().orElseThrow()));
    }

    private HoistCheck check(Act.OpenDay.Checked checked) {
        return new HoistCheck(checked.placeId(), checked.by(), now, checked.lockedOut());
    }

    private Optional<Refusal> refusal(Act.OpenDay.Checked checked) {
        Day day = draft.day();
        if (day.shop().findPlace(checked.placeId()).filter(Place::isHoist).isEmpty()) {
            return Optional.of(Refusal.of("hoist_unknown", checked.placeId()));
        }
        return day.shop().findPerson(checked.by()).isPresent()
                ? Optional.empty()
                : Optional.of(Refusal.of("person_unknown", checked.by()));
    }

    private Optional<Refusal> notRunning() {
        Day day = draft.day();
        if (!day.isOpened()) {
            return Optional.of(Refusal.of("day_not_open"));
        }
        return day.isClosed() ? Optional.of(Refusal.of("day_already_closed", day.date())) : Optional.empty();
    }

    Outcome beHere(Act.BeHere act) {
        Day day = draft.day();
        Optional<Refusal> no = notRunning();
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        if (day.shop().findPerson(act.personId()).isEmpty()) {
            return new Outcome.Refused(Refusal.of("person_unknown", act.personId()));
        }
        Opening opening = day.opening().get();
        Instant from = opening.attendanceOf(act.personId())
                .filter(presence -> presence.left().isEmpty())
                .map(Attendance::from)
                .orElse(now);
        if (!act.until().isAfter(now)) {
            return new Outcome.Refused(Refusal.of("until_is_over", When.CLOCK.say(day.timeOf(act.until()))));
        }
        Attendance attendance = new Attendance(act.personId(), from, act.until(), Optional.empty());
        draft.put(opening.with(attendance));
        return draft.done();
    }

    Outcome close(Act.CloseDay act) {
        Day day = draft.day();
        Optional<Refusal> no = notRunning();
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        if (day.shop().findPerson(act.by()).isEmpty()) {
            return new Outcome.Refused(Refusal.of("person_unknown", act.by()));
        }
        List<String> busy = day.entries().stream()
                .filter(ClockEntry::isOpen)
                .map(ClockEntry::personId)
                .toList();
        if (!busy.isEmpty()) {
            return new Outcome.Refused(Refusal.of("still_clocked_on", names(busy)));
        }
        boolean isOver = !day.date().equals(LocalDate.ofInstant(now, day.zone()));
        List<String> here = day.stillHere().stream()
                .filter(person -> isOver || !person.equals(act.by()))
                .toList();
        if (!here.isEmpty()) {
            return new Outcome.Refused(Refusal.of("still_here", names(here)));
        }
        Opening opening = isOver ? day.opening().get() : goneHome(day.opening().get(), act.by());
        new PinActs(draft, now).endOf(day.date());
        draft.put(opening.closed(new Opening.Closed(now, act.by())));
        return draft.done();
    }

    private String names(List<String> people) {
        return people.stream().distinct().map(draft.day()::nameOf).collect(Collectors.joining(", "));
    }

    /** Who closes the day leaves with that, unless they have left. */
    private Opening goneHome(Opening opening, String personId) {
        return opening.here().stream()
                .filter(presence -> presence.personId().equals(personId))
                .findFirst()
                .map(presence -> opening.with(presence.leftAt(now)))
                .orElse(opening);
    }
}
