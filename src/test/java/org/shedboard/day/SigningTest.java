package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.Activity.OtherWork.Kind;
import org.shedboard.hours.HoursRules;

class SigningTest {
    private final Shed shed = Shed.open();

    private Optional<String> signer(Act act) {
        return Signing.signerOf(shed.day(), act);
    }

    private static Act.Correct correct(String by, String whose) {
        Act.Correct.Written right =
                new Act.Correct.Written(whose, new OtherWork(Kind.TRAINING), Shed.time("08:00"), Shed.time("08:30"));
        return new Act.Correct(by, Optional.empty(), Optional.of(right), "forgot");
    }

    @Test
    void who_closes_the_day_or_sets_the_rules_signs() {
        assertEquals(Optional.of("bo"), signer(new Act.CloseDay("bo")));
        assertEquals(Optional.of("ada"), signer(new Act.SetHoursRules("ada", HoursRules.USUAL)));
    }

    @Test
    void ones_own_hours_of_a_day_that_runs_need_no_signature() {
        assertEquals(Optional.empty(), signer(correct("bo", "bo")));
    }

    @Test
    void anothers_hours_do_whether_they_are_written_or_taken_away() {
        assertEquals(Optional.of("ada"), signer(correct("ada", "bo")));
        shed.at("10:00").does(new Act.DoOther("bo", Kind.TRAINING));
        shed.at("11:00").does(new Act.Stop("bo", false));
        Optional<String> row = Optional.of(shed.day().entries().get(0).id());
        assertEquals(Optional.of("ada"), signer(new Act.Correct("ada", row, Optional.empty(), "why")));
        assertEquals(Optional.empty(), signer(new Act.Correct("bo", row, Optional.empty(), "why")));
    }

    @Test
    void so_do_ones_own_of_a_closed_day() {
        shed.does(new Act.Stop("bo", true));
        shed.does(new Act.Stop("cy", true));
        shed.does(new Act.CloseDay("ada"));
        assertEquals(Optional.of("bo"), signer(correct("bo", "bo")));
    }

    @Test
    void nothing_else_does() {
        assertEquals(Optional.empty(), signer(new Act.Stop("bo", true)));
        assertEquals(Optional.empty(), signer(new Act.DoOther("bo", Kind.TRAINING)));
    }
}
