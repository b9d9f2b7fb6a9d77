package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Plan;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;

/** Tarn's property wants its machines washed down, and that signed, before they come into any bay. */
class WashDownTest {
    private static final String SIGN = "sign-wash-down";

    private final Shed shed = Shed.open();

    @Test
    void even_a_clean_machine_is_washed_signed_for_and_the_pad_cleaned_before_any_bay() {
        washDownFirst();
        Stay first = shed.visit(shed.quad()).stays().get(0);
        assertEquals(Step.WASH, first.step());
        assertEquals(
                List.of("in-wash", "wash", SIGN, "clean-pad"),
                first.tasks().stream().map(Task::id).toList());
        assertEquals(6, first.findTask("wash").orElseThrow().handsOn(), "as a dusty one");
    }

    @Test
    void a_machine_of_another_time_or_property_is_left_as_it_is() {
        assertEquals(Step.UNDERSIDE, shed.visit(shed.quad()).stays().get(0).step());
    }

    @Test
    void no_bay_is_entered_before_it_is_signed_and_the_pad_cleaned() {
        washDownFirst();
        String quad = shed.quad();
        shed.works("cy", quad, "in-wash", "wash");
        assertTrue(WashDowns.isAwaited(shed.visit(quad)));
        assertEquals(
                Refusal.of("not_yet", "drive_in", "sign_wash_down"),
                shed.refuses(Shed.start("cy", quad, "in-underside")));
        shed.works("ada", quad, SIGN);
        assertFalse(WashDowns.isAwaited(shed.visit(quad)));
        assertEquals(
                Optional.of("ada"),
                WashDowns.signed(shed.visit(quad)).orElseThrow().person());
        shed.assertRefused("not_yet", Shed.start("cy", quad, "in-underside"));
        shed.works("cy", quad, "clean-pad", "in-underside");
    }

    @Test
    void who_washed_it_does_not_sign_for_it() {
        washDownFirst();
        String quad = shed.quad();
        shed.works("ada", quad, "in-wash", "wash");
        shed.assertRefused("own_work", Shed.start("ada", quad, SIGN));
        shed.assertRefused("skill_missing", Shed.start("cy", quad, SIGN));
        shed.works("bo", quad, SIGN);
    }

    @Test
    void the_plan_has_the_pad_taken_until_it_is_clean_and_the_next_machine_after() {
        washDownFirst();
        String first = shed.does(Shed.takeIn("quad-1", Mud.CAKED, "oil")).orElseThrow();
        String second = shed.does(Shed.takeIn("quad-2", Mud.CAKED, "oil")).orElseThrow();
        Outlook outlook = shed.outlook();
        assertTrue(PlanCheck.of(outlook.problem(), outlook.plan()).isLegal());
        Plan.StayPlace wash = outlook.plan().findStay(first, 0).orElseThrow();
        int cleaned = outlook.timeOf(first, "clean-pad").orElseThrow().end();
        assertEquals("W", wash.place());
        assertTrue(wash.to() >= cleaned);
        Plan.StayPlace other = outlook.plan().findStay(second, 0).orElseThrow();
        assertTrue(other.from() >= wash.to() || other.to() <= wash.from());
        assertTrue(outlook.timeOf(first, "in-underside").orElseThrow().start() >= cleaned);
    }

    @Test
    void a_booking_made_before_is_planned_anew_and_what_has_begun_is_not() {
        String booked = shed.does(Shed.booking("quad-2", "10:00", "oil")).orElseThrow();
        String begun = shed.quad();
        shed.works("ada", begun, "in-underside");
        washDownFirst();
        assertEquals(Step.WASH, shed.visit(booked).stays().get(0).step());
        assertEquals(Step.UNDERSIDE, shed.visit(begun).stays().get(0).step());
        shed.does(new Act.SetWashDown("O-a", false));
        assertEquals(Step.UNDERSIDE, shed.visit(booked).stays().get(0).step());
    }

    @Test
    void whoever_takes_the_machine_in_is_told_first_of_all() {
        washDownFirst();
        DoorNote first = DoorNotes.of(shed.day(), Shed.takeIn("quad-1", Mud.CLEAN, "oil"), shed.now())
                .get(0);
        assertEquals(DoorNote.of(DoorNote.Kind.WASH_DOWN_FIRST, "Tarn"), first);
    }

    @Test
    void the_board_says_so_until_it_is_signed() {
        washDownFirst();
        String quad = shed.quad();
        shed.works("cy", quad, "in-wash", "wash");
        assertTrue(kinds().contains(Concern.Kind.WASH_DOWN_AWAITED));
        shed.works("ada", quad, SIGN);
        assertFalse(kinds().contains(Concern.Kind.WASH_DOWN_AWAITED));
    }

    @Test
    void an_owner_nobody_knows_has_no_property() {
        shed.assertRefused("owner_unknown", new Act.SetWashDown("nobody", true));
    }

    private List<Concern.Kind> kinds() {
        return Concerns.of(shed.outlook()).stream().map(Concern::kind).toList();
    }

    private void washDownFirst() {
        shed.does(new Act.SetWashDown("O-a", true));
    }
}
