package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.Activity.OtherWork.Kind;
import org.shedboard.hours.HoursRules;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Person;

class SigningTest {
    private final Shed shed = Shed.open();

    private Optional<Signer> signer(Act act) {
        return Signing.signerOf(shed.day(), act);
    }

    private static Optional<Signer> named(String personId) {
        return Optional.of(new Signer.Named(personId));
    }

    private void close() {
        shed.does(new Act.Stop("bo", true));
        shed.does(new Act.Stop("cy", true));
        shed.does(new Act.CloseDay("ada"));
    }

    private static Act.Correct correct(String by, String whose) {
        Act.Correct.Written right =
                new Act.Correct.Written(whose, new OtherWork(Kind.TRAINING), Shed.time("08:00"), Shed.time("08:30"));
        return new Act.Correct(by, Optional.empty(), Optional.of(right), "forgot");
    }

    @Test
    void who_closes_the_day_or_sets_the_rules_signs() {
        assertEquals(named("bo"), signer(new Act.CloseDay("bo")));
        assertEquals(named("ada"), signer(new Act.SetHoursRules("ada", HoursRules.USUAL)));
    }

    @Test
    void ones_own_hours_of_a_day_that_runs_need_no_signature() {
        assertEquals(Optional.empty(), signer(correct("bo", "bo")));
    }

    @Test
    void anothers_hours_do_whether_they_are_written_or_taken_away() {
        assertEquals(named("ada"), signer(correct("ada", "bo")));
        shed.at("10:00").does(new Act.DoOther("bo", Kind.TRAINING));
        shed.at("11:00").does(new Act.Stop("bo", false));
        Optional<String> row = Optional.of(shed.day().entries().get(0).id());
        assertEquals(named("ada"), signer(new Act.Correct("ada", row, Optional.empty(), "why")));
        assertEquals(Optional.empty(), signer(new Act.Correct("bo", row, Optional.empty(), "why")));
    }

    @Test
    void so_do_ones_own_of_a_closed_day() {
        close();
        assertEquals(named("bo"), signer(correct("bo", "bo")));
    }

    @Test
    void so_do_settings_and_minutes_of_the_catalogue() {
        assertEquals(named("bo"), signer(new Act.SetPackedPercent("bo", 80)));
        assertEquals(named("bo"), signer(new Act.AcceptFigure("wash:quad:caked", 20, 30, "bo")));
    }

    @Test
    void what_cannot_be_had_back_is_signed_by_anybody_who_can() {
        assertEquals(Optional.of(new Signer.Anybody()), signer(new Act.MergeMachines("quad-1", "quad-2")));
        assertEquals(Optional.of(new Signer.Anybody()), signer(new Act.ForgetOwner("O-a")));
    }

    @Test
    void what_a_closed_day_has_of_machines_changes_with_a_signature_alone() {
        String quad = shed.quad();
        Act tick = new Act.Tick("bo", quad, "boots", Mark.GOOD, OptionalDouble.empty(), "");
        List<Act> acts = List.of(
                new Act.Arrive(quad, Optional.empty(), OptionalInt.empty()),
                new Act.Collect(quad, Optional.empty()),
                new Act.AgreeHours(quad, "L1", 60),
                new Act.FitPart(quad, "L1", "plug", "I1", "bo"),
                tick);
        acts.forEach(act -> assertEquals(Optional.empty(), signer(act)));
        close();
        acts.forEach(act -> assertEquals(Optional.of(new Signer.Anybody()), signer(act)));
    }

    @Test
    void what_is_to_come_is_nothing_of_a_closed_day() {
        String quad = shed.quad();
        close();
        assertEquals(Optional.empty(), signer(new Act.CallOff(quad, false)));
        assertEquals(Optional.empty(), signer(new Act.SayPromise(quad, Shed.time("15:00"), "bo", "them", "", false)));
    }

    /** So that no key takes back without a PIN what took one. */
    @Test
    void what_was_signed_leaves_nothing_to_take_back() {
        shed.at("10:00");
        for (Act act : List.of(
                new Act.SetHoursRules("ada", HoursRules.USUAL),
                new Act.SetPackedPercent("ada", 80),
                new Act.AcceptFigure("wash:quad:caked", 20, 30, "ada"),
                correct("ada", "bo"))) {
            Outcome.Done done = (Outcome.Done) Planning.carryOut(shed.day(), act, shed.now());
            assertTrue(Lasting.of(act, done.trace()).isPresent(), act.toString());
        }
    }

    private static Books signedBy(Books books, String personId) {
        return new Books(
                books.shop(),
                books.catalogue(),
                books.owners(),
                books.machines(),
                books.hoursRules(),
                Set.of(personId));
    }

    @Test
    void nobody_is_locked_out_of_a_shop_without_pins_and_afterwards_those_sign_who_have_one() {
        assertEquals(shed.day().shop().people(), new Signer.Anybody().among(shed.day()));
        Day signing = shed.day().with(signedBy(shed.day().books(), "cy"));
        assertEquals(
                List.of("cy"),
                new Signer.Anybody().among(signing).stream().map(Person::id).toList());
        assertEquals(
                List.of("bo"),
                new Signer.Named("bo").among(signing).stream().map(Person::id).toList());
    }

    @Test
    void nothing_else_does() {
        assertEquals(Optional.empty(), signer(new Act.Stop("bo", true)));
        assertEquals(Optional.empty(), signer(new Act.DoOther("bo", Kind.TRAINING)));
    }
}
