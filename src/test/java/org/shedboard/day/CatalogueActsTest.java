package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Problem;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** Figures put right, and the minutes that are packed. */
class CatalogueActsTest {
    private static final Act CAKED = new Act.AcceptFigure("wash:quad:caked", 20, 30, "ada");

    private final Shed shed = Shed.open();

    private String takenIn(String machine) {
        return shed.does(Shed.takeIn(machine, Mud.CAKED, "oil")).orElseThrow();
    }

    private Task wash(String visit) {
        return shed.day().expectVisit(visit).findTask("wash").orElseThrow();
    }

    @Test
    void an_accepted_figure_is_in_the_catalogue_and_in_what_has_not_begun() {
        String quad = takenIn("quad-1");
        assertEquals(20, wash(quad).handsOn());
        shed.does(CAKED);
        assertEquals(30, shed.day().books().catalogue().expectClass("quad").washMinutes(Mud.CAKED));
        assertEquals(30, wash(quad).handsOn());
    }

    @Test
    void a_booking_gets_the_new_minutes_and_other_tasks_keep_theirs() {
        String booked = shed.does(Shed.takeIn(
                        Act.TakeIn.Which.known("quad-2"),
                        Shed.nobodyNew(),
                        Mud.CAKED,
                        OptionalInt.empty(),
                        Optional.of(Shed.time("13:00")),
                        "oil"))
                .orElseThrow();
        Visit before = shed.day().expectVisit(booked);
        shed.does(CAKED);
        Visit after = shed.day().expectVisit(booked);
        assertEquals(30, wash(booked).handsOn());
        assertEquals(before.tasks().size(), after.tasks().size());
        for (Task task : before.tasks()) {
            if (!task.id().equals("wash")) {
                assertEquals(Optional.of(task), after.findTask(task.id()));
            }
        }
    }

    @Test
    void who_is_on_a_task_goes_on_with_the_minutes_they_were_told() {
        String quad = takenIn("quad-1");
        shed.does(new Act.Start("ada", quad, "in-wash", Optional.empty()));
        shed.later(3).does(new Act.Finish("ada", quad, "in-wash", Optional.empty()));
        shed.does(new Act.Start("ada", quad, "wash", Optional.empty()));
        shed.does(CAKED);
        assertEquals(20, wash(quad).handsOn());
    }

    @Test
    void the_second_to_accept_is_told_that_the_figure_has_changed() {
        shed.does(CAKED);
        Refusal refusal = shed.refuses(CAKED);
        assertEquals("figure_changed", refusal.name());
        assertEquals(List.of("wash:quad:caked", "20", "30"), refusal.values());
    }

    @Test
    void a_figure_is_set_back_in_the_same_way() {
        Day before = shed.day();
        shed.does(CAKED);
        shed.does(new Act.AcceptFigure("wash:quad:caked", 30, 20, "ada"));
        assertEquals(before.books().catalogue(), shed.day().books().catalogue());
    }

    @Test
    void nobody_accepts_or_sets_anything_who_does_not_work_here() {
        shed.assertRefused("person_unknown", new Act.AcceptFigure("wash:quad:caked", 20, 30, "zed"));
        shed.assertRefused("person_unknown", new Act.SetPackedPercent("zed", 80));
    }

    @Test
    void the_hands_on_minutes_of_a_work_are_put_right_and_what_drains_goes_on_draining() {
        String quad = takenIn("quad-1");
        shed.does(new Act.AcceptFigure("task:oil:drain", 5, 9, "ada"));
        Task drain = shed.day().expectVisit(quad).findTask("drain").orElseThrow();
        assertEquals(9, drain.handsOn());
        assertEquals(10, drain.unattended());
    }

    @Test
    void with_more_of_a_hundred_packed_tasks_are_longer_and_chances_are_still_replayed_around_the_likely_minutes() {
        String quad = takenIn("quad-1");
        Packing half = Problems.packing(shed.day(), shed.now());
        shed.does(new Act.SetPackedPercent("ada", 80));
        Packing most = Problems.packing(shed.day(), shed.now());
        assertEquals(80, shed.day().books().foresight().packedPercent());
        assertTrue(
                minutes(most.packed(), quad) > 1.1 * minutes(half.packed(), quad),
                minutes(most.packed(), quad) + " after " + minutes(half.packed(), quad));
        assertEquals(minutes(half.packed(), quad), minutes(most.likely(), quad));
        shed.does(new Act.SetPackedPercent("ada", 50));
        assertEquals(minutes(half.packed(), quad), minutes(Problems.of(shed.day(), shed.now()), quad));
    }

    @Test
    void a_paused_task_goes_on_when_somebody_can_whatever_is_packed() {
        String quad = takenIn("quad-1");
        shed.does(new Act.SetPackedPercent("ada", 80));
        shed.at("07:10").does(Shed.start("ada", quad, "in-wash"));
        shed.at("07:13").does(Shed.finish("ada", quad, "in-wash"));
        shed.does(Shed.start("ada", quad, "wash"));
        shed.at("07:20").does(new Act.Pause(quad, "wash"));
        Outlook outlook = shed.outlook();
        assertEquals(
                outlook.problem().now(),
                outlook.handsFrom(outlook.timeOf(quad, "wash").orElseThrow()));
    }

    private static int minutes(Problem problem, String job) {
        return problem.jobs().stream()
                .filter(each -> each.id().equals(job))
                .flatMap(each -> each.stays().stream())
                .flatMap(stay -> stay.tasks().stream())
                .mapToInt(Problem.Task::handsOn)
                .sum();
    }
}
