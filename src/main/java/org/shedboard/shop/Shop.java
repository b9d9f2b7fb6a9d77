package org.shedboard.shop;

import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One workshop: its places, people and hours. Places and people keep the order in which the board shows them. */
public record Shop(String name, ZoneId zone, Set<DayOfWeek> workdays, List<Place> places, List<Person> people) {
    public Shop {
        workdays = Set.copyOf(workdays);
        places = List.copyOf(places);
        people = List.copyOf(people);
    }

    public Optional<Place> findPlace(String id) {
        return places.stream().filter(place -> place.id().equals(id)).findFirst();
    }

    public Place expectPlace(String id) {
        return findPlace(id).orElseThrow(() -> new IllegalArgumentException("no place %s in this shop".formatted(id)));
    }

    public Optional<Person> findPerson(String id) {
        return people.stream().filter(person -> person.id().equals(id)).findFirst();
    }

    public Person expectPerson(String id) {
        return findPerson(id)
                .orElseThrow(() -> new IllegalArgumentException("no person %s in this shop".formatted(id)));
    }

    /** The person whose name or id this is, letter case aside. */
    public Optional<Person> findPersonCalled(String nameOrId) {
        return people.stream()
                .filter(person ->
                        person.name().equalsIgnoreCase(nameOrId) || person.id().equalsIgnoreCase(nameOrId))
                .findFirst();
    }

    public List<Place> hoists() {
        return places.stream().filter(Place::isHoist).toList();
    }
}
