package org.shedboard.learn;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

/**
 * What work was, or will be, done under.
 *
 * @param ageYears of the machine, where its year is known
 * @param people the share of the work that each person does, by id; together 1, or none where nobody is known yet
 */
public record Circumstances(
        String classId, Mud mud, Depth depth, OptionalInt ageYears, LocalDate date, Map<String, Double> people) {
    public Circumstances {
        people = Map.copyOf(new LinkedHashMap<>(people));
        people.forEach((id, share) -> {
            if (!(share >= 0) || Double.isInfinite(share)) {
                throw new IllegalArgumentException("nobody does %s of the work, as %s is said to".formatted(share, id));
            }
        });
    }

    public Circumstances with(Mud grade) {
        return new Circumstances(classId, grade, depth, ageYears, date, people);
    }

    public Circumstances with(Depth look) {
        return new Circumstances(classId, mud, look, ageYears, date, people);
    }

    public Circumstances by(String personId) {
        return new Circumstances(classId, mud, depth, ageYears, date, Map.of(personId, 1.0));
    }

    /** Id of the person who does most of it; of two who do as much, the one whose id comes last. */
    public Optional<String> mostBy() {
        return people.entrySet().stream()
                .max(Map.Entry.<String, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey);
    }
}
