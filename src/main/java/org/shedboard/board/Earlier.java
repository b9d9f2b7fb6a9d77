package org.shedboard.board;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.shop.Visit;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/**
 * A change made at another terminal to the same thing that somebody was about to change here.
 *
 * @param who id of the person who made it, or what they are called
 * @param act what was done, by the simple name of its act; anything else that a journal says of a change
 * @param visitId the visit it was about
 * @param machine what the machine is called that it was made at; empty where that is this one
 */
public record Earlier(String who, Instant at, String act, Optional<String> visitId, Optional<String> machine) {
    private static final String DID = "did.";

    /** Who was first, when, and what they did. */
    String sentence(Day day) {
        String name = visitId.flatMap(day::findVisit)
                .map((Visit visit) -> Names.of(day, visit))
                .orElse("");
        String what = Words.has(DID + act) ? Words.say(DID + act, name).strip() : Words.say("did_something");
        String clock = When.CLOCK.say(at.atZone(day.zone()));
        return machine.map(from -> Words.say("earlier.from", day.nameOf(who), clock, what, from))
                .orElseGet(() -> Words.say("earlier", day.nameOf(who), clock, what));
    }
}
