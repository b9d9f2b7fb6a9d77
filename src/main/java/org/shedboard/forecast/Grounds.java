package org.shedboard.forecast;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.estimate.Catalogue;
import org.shedboard.learn.Learned;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Person;

/** What forecasts are made from: the catalogue, who works here, and what finished work taught. */
public record Grounds(Catalogue catalogue, List<Person> people, Learned learned) {
    public Grounds {
        people = List.copyOf(people);
    }

    /** Who of those who are here does this sort of work, and how much of it each; nobody before anybody did. */
    Map<String, Double> usualPeople(Sort sort) {
        Set<String> here = people.stream().map(Person::id).collect(Collectors.toSet());
        Map<String, Double> usual = new LinkedHashMap<>(learned.usualPeople(sort));
        usual.keySet().retainAll(here);
        double all = usual.values().stream().mapToDouble(each -> each).sum();
        usual.replaceAll((person, share) -> share / all);
        return usual;
    }

    /** Hands-on minutes for one of the catalogue where these people share the work; one where nobody is named. */
    double pace(Map<String, Double> shares) {
        return shares.isEmpty() ? 1 : Lessons.pace(Lessons.pacesOf(people), shares);
    }
}
