package org.shedboard.day;

import java.util.Optional;
import org.shedboard.shop.Place;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Visit;

/** Where a stay can be: a place of the right kind, rated for the machine, checked today, with nothing else in it. */
final class Places {
    private final Day day;
    private final Visit visit;
    private final Stay stay;

    Places(Day day, Visit visit, Stay stay) {
        this.day = day;
        this.visit = visit;
        this.stay = stay;
    }

    /** The place to use when nobody names one: where it stands, else as planned, else the first that will do. */
    Optional<String> choose() {
        if (stay.placeId().isPresent()) {
            return stay.placeId();
        }
        Optional<String> planned = day.posted()
                .flatMap(posted ->
                        posted.plan().findStay(visit.id(), visit.stays().indexOf(stay)))
                .map(at -> at.place())
                .filter(place -> refusal(place).isEmpty());
        return planned.or(() -> day.shop().places().stream()
                .map(Place::id)
                .filter(place -> refusal(place).isEmpty())
                .findFirst());
    }

    Optional<Refusal> refusal(String placeId) {
        return unfit(placeId).or(() -> taken(placeId));
    }

    private Optional<Refusal> taken(String placeId) {
        Place place = day.shop().findPlace(placeId).orElseThrow();
        return day.standingIn(placeId)
                .filter(other -> !other.id().equals(visit.id()))
                .map(other -> Refusal.of("place_taken", place.name(), Names.of(day, other)));
    }

    /** Why the machine may never be put there today, whether anything stands in it now or not. */
    Optional<Refusal> unfit(String placeId) {
        Optional<Place> found = day.shop().findPlace(placeId);
        if (found.isEmpty()) {
            return Optional.of(Refusal.of("place_unknown", placeId));
        }
        Place place = found.get();
        if (!stay.kinds().contains(place.kind())) {
            return Optional.of(Refusal.of("place_wrong_kind", place.name(), Names.of(day, visit)));
        }
        int mass = day.machineOf(visit).massKg();
        if (!place.carries(mass)) {
            return Optional.of(
                    Refusal.of("hoist_overloaded", place.name(), place.ratedKg(), Names.of(day, visit), mass));
        }
        if (place.isHoist() && !isChecked(place)) {
            return Optional.of(Refusal.of("hoist_not_checked", place.name()));
        }
        return Optional.empty();
    }

    private boolean isChecked(Place hoist) {
        return day.opening().filter(opening -> opening.isChecked(hoist.id())).isPresent();
    }
}
