package org.shedboard.ahead;

import java.time.LocalDate;
import java.util.List;
import org.shedboard.shop.Skill;

/**
 * What one visit asks of the shop.
 *
 * @param date the day on which it begins, or goes on
 */
public record Demand(String visitId, LocalDate date, List<Claim<Skill>> people, List<Claim<Bay>> places) {
    public Demand {
        people = List.copyOf(people);
        places = List.copyOf(places);
    }
}
