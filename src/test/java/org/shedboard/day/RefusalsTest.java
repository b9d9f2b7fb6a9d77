package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.estimate.Item;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.Activity.OtherWork.Kind;
import org.shedboard.pack.Plan;
import org.shedboard.register.Reading;
import org.shedboard.register.Rung;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Mark;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;

/** Every reason why something cannot be, produced by an act that cannot be; a refusal comes without any change. */
class RefusalsTest {
    private static final Map<String, Consumer<Shed>> CASES = cases();

    private static Map<String, Consumer<Shed>> cases() {
        Map<String, Consumer<Shed>> cases = new LinkedHashMap<>();
        opening(cases);
        door(cases);
        promises(cases);
        floor(cases);
        places(cases);
        machine(cases);
        clock(cases);
        corrections(cases);
        errands(cases);
        charges(cases);
        meters(cases);
        parts(cases);
        register(cases);
        inspection(cases);
        figures(cases);
        takenBack(cases);
        byHand(cases);
        return cases;
    }

    private static void takenBack(Map<String, Consumer<Shed>> cases) {
        cases.put("changed_since", shed -> {
            String quad = shed.quad();
            Trace held = shed.leaves(Shed.hold(quad));
            shed.does(new Act.Release(quad));
            shed.assertRefused("changed_since", Shed.back(held));
        });
        cases.put("hours_changed_since", shed -> {
            shed.does(shed.openDay());
            Trace on = shed.leaves(new Act.DoOther("bo", Kind.TRAINING));
            shed.later(5).does(new Act.Stop("bo", false));
            shed.assertRefused("hours_changed_since", Shed.back(on));
        });
        cases.put("errand_changed_since", shed -> {
            shed.does(shed.openDay());
            Act plan = new Act.PlanErrand("bo", Kind.FETCHING, Shed.time("10:00"), 30, "");
            Trace planned = shed.leaves(plan);
            shed.does(new Act.DropErrand(shed.day().errands().get(0).id()));
            shed.assertRefused("errand_changed_since", Shed.back(planned));
        });
        cases.put("plan_changed_since", shed -> {
            shed.does(shed.openDay());
            Posted before = shed.day().posted().orElseThrow();
            shed.quad();
            Trace.Plans moved = new Trace.Plans(Optional.of(before), Optional.of(before));
            Trace post = new Trace(List.of(), List.of(), List.of(), List.of(), List.of(), moved);
            shed.assertRefused("plan_changed_since", Shed.back(post));
        });
    }

    private static void byHand(Map<String, Consumer<Shed>> cases) {
        cases.put("hand_not_there", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("hand_not_there", new Act.LiftPin(shed.quad(), "in-underside"));
        });
        cases.put("hand_has_begun", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.does(Shed.start("ada", quad, "in-underside"));
            shed.assertRefused("hand_has_begun", Hand.person(quad, "in-underside", "bo"));
        });
        cases.put("hand_is_past", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("hand_is_past", Hand.at(shed.quad(), "in-underside", "06:59"));
        });
        cases.put("hand_before_it_comes", shed -> {
            shed.does(shed.openDay());
            String booked = shed.does(Shed.booking("quad-2", "12:00", "oil")).orElseThrow();
            shed.assertRefused("hand_before_it_comes", Hand.at(booked, "in-underside", "11:59"));
        });
        cases.put("hand_needs_person", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("hand_needs_person", Hand.at(shed.quad(), "in-underside", "23:00"));
        });
        cases.put("skill_not_lent", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("skill_not_lent", Hand.person(shed.quad(), "sign-off", "cy"));
        });
        cases.put("hand_cannot_hold", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("hand_cannot_hold", Hand.at(shed.quad(), "sign-off", "07:00"));
        });
    }

    private static void figures(Map<String, Consumer<Shed>> cases) {
        cases.put(
                "figure_unknown",
                shed -> shed.assertRefused("figure_unknown", new Act.AcceptFigure("wash:boat:caked", 20, 30, "ada")));
        cases.put(
                "figure_changed",
                shed -> shed.assertRefused("figure_changed", new Act.AcceptFigure("wash:quad:caked", 21, 30, "ada")));
        cases.put(
                "figure_range",
                shed -> shed.assertRefused("figure_range", new Act.AcceptFigure("wash:quad:caked", 20, 11, "ada")));
        cases.put("percent_range", shed -> {
            shed.assertRefused("percent_range", new Act.SetPackedPercent("ada", 49));
            shed.assertRefused("percent_range", new Act.SetPackedPercent("ada", 91));
        });
    }

    private static void meters(Map<String, Consumer<Shed>> cases) {
        cases.put("meter_backwards", shed -> {
            shed.does(reading(100));
            shed.assertRefused("meter_backwards", reading(99));
            shed.assertRefused("meter_backwards", Shed.withMeter(Shed.takeIn("quad-1", Shed.CLEAN, "oil"), 99));
        });
        cases.put("meter_impossible", shed -> {
            shed.does(reading(100));
            shed.assertRefused("meter_impossible", reading(200));
        });
        cases.put("meter_leap", shed -> {
            shed.does(reading(100));
            shed.days(20).does(reading(120));
            shed.days(10).assertRefused("meter_leap", reading(180));
        });
        cases.put("meter_other_unit", shed -> {
            shed.does(reading(100));
            shed.assertRefused(
                    "meter_other_unit",
                    new Act.ReadMeter("quad-1", Reading.Unit.KILOMETRES, 2000, Reading.Told.AS_EXPECTED, "ada"));
        });
        cases.put(
                "ring_again_when",
                shed -> shed.assertRefused(
                        "ring_again_when", new Act.NoteRung("quad-1", Rung.Said.AGAIN, Optional.empty(), "", "ada")));
        cases.put(
                "ring_again_later",
                shed -> shed.assertRefused(
                        "ring_again_later",
                        new Act.NoteRung("quad-1", Rung.Said.AGAIN, Optional.of(Shed.DATE), "", "ada")));
    }

    private static Act reading(int hours) {
        return new Act.ReadMeter("quad-1", Reading.Unit.HOURS, hours, Reading.Told.AS_EXPECTED, "ada");
    }

    private static void parts(Map<String, Consumer<Shed>> cases) {
        cases.put("part_unknown", shed -> {
            String quad = stocked(shed).quad();
            shed.assertRefused("part_unknown", fit(shed, quad, "Gasket", Parts.OIL));
        });
        cases.put("item_not_of_part", shed -> {
            String quad = stocked(shed).quad();
            shed.assertRefused("item_not_of_part", fit(shed, quad, "Washer", Parts.OIL));
        });
        cases.put("part_open", shed -> {
            stocked(shed).does(shed.openDay());
            String quad = shed.quad();
            shed.works("ada", quad, "in-underside", "raise", "inspect-underside", "drain");
            shed.later(20).does(Shed.start("ada", quad, "plug"));
            assertEquals(
                    List.of("plug", "Washer"),
                    shed.refuses(Shed.finish("ada", quad, "plug")).values());
            shed.assertRefused("part_open", Shed.finish("ada", quad, "plug"));
        });
        cases.put(
                "item_unknown",
                shed -> stocked(shed)
                        .assertRefused(
                                "item_unknown", new Act.CountStock("tea", Amount.of(1), Optional.empty(), "bo")));
        cases.put(
                "not_whole",
                shed -> stocked(shed)
                        .assertRefused(
                                "not_whole", new Act.CountStock("w12", new Amount(1_500), Optional.empty(), "bo")));
        cases.put(
                "not_counted",
                shed -> Parts.shed(shed, List.of(), List.of())
                        .assertRefused("not_counted", order(Parts.OIL, 5, Optional.empty())));
        cases.put(
                "nothing_ordered",
                shed -> stocked(shed).assertRefused("nothing_ordered", order(Parts.OIL, 0, Optional.empty())));
        cases.put(
                "due_is_over",
                shed -> stocked(shed)
                        .at("09:00")
                        .assertRefused("due_is_over", order(Parts.OIL, 5, Optional.of(Shed.time("08:59")))));
        cases.put(
                "order_unknown", shed -> stocked(shed).assertRefused("order_unknown", new Act.OrderCame("R99", "bo")));
    }

    private static Shed stocked(Shed shed) {
        return Parts.shed(shed, List.of(Parts.plenty()), List.of());
    }

    private static Act fit(Shed shed, String visit, String part, Item item) {
        return new Act.FitPart(visit, shed.visit(visit).lines().get(0).id(), part, item.id(), "ada");
    }

    private static Act order(Item item, int amount, Optional<Instant> due) {
        return new Act.OrderStock(item.id(), Amount.of(amount), due, "bo");
    }

    private static void clock(Map<String, Consumer<Shed>> cases) {
        cases.put("still_here", shed -> {
            shed.does(shed.openDay());
            shed.does(new Act.Stop("bo", true));
            assertEquals(List.of("Cy"), shed.refuses(new Act.CloseDay("ada")).values());
            shed.assertRefused("still_here", new Act.CloseDay("ada"));
        });
        cases.put("time_to_come", shed -> {
            shed.does(shed.openDay());
            shed.at("10:00").assertRefused("time_to_come", stop("bo", "10:01"));
            shed.assertRefused("time_to_come", right("bo", new Activity.AtWork(), "06:00", "10:01"));
        });
        cases.put("leave_before_arrive", shed -> {
            shed.does(shed.openDay());
            shed.at("10:00").assertRefused("leave_before_arrive", stop("bo", "06:59"));
            shed.assertRefused("leave_before_arrive", right("bo", new Activity.AtWork(), "06:30", "06:30"));
        });
        cases.put("off_before_on", shed -> {
            shed.does(shed.openDay());
            shed.at("09:00").does(new Act.DoOther("bo", Kind.TRAINING));
            Act off = new Act.Stop("bo", false, Optional.of(Shed.time("08:59")));
            shed.at("10:00").assertRefused("off_before_on", off);
            shed.assertRefused("off_before_on", right("cy", new OtherWork(Kind.TRAINING), "09:00", "08:00"));
        });
        cases.put("lent_to_own", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.does(Shed.start("ada", quad, "in-underside"));
            shed.assertRefused("lent_to_own", new Act.Lend("ada", quad));
        });
        cases.put("not_lent", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("not_lent", new Act.BringBack("ada"));
            shed.does(new Act.DoOther("ada", Kind.TRAINING));
            shed.assertRefused("not_lent", new Act.BringBack("ada"));
        });
    }

    private static Act stop(String person, String at) {
        return new Act.Stop(person, true, Optional.of(Shed.time(at)));
    }

    private static Act.Correct right(String person, Activity activity, String from, String to) {
        return right(Optional.empty(), person, activity, from, to);
    }

    private static Act.Correct right(
            Optional<String> replaces, String person, Activity activity, String from, String to) {
        Act.Correct.Written right = new Act.Correct.Written(person, activity, Shed.time(from), Shed.time(to));
        return new Act.Correct("ada", replaces, Optional.of(right), "forgot");
    }

    private static void corrections(Map<String, Consumer<Shed>> cases) {
        Activity training = new OtherWork(Kind.TRAINING);
        cases.put("correction_needs_reason", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused(
                    "correction_needs_reason", new Act.Correct("ada", Optional.of("C1"), Optional.empty(), " "));
        });
        cases.put("correction_says_nothing", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused(
                    "correction_says_nothing", new Act.Correct("ada", Optional.empty(), Optional.empty(), "why"));
        });
        cases.put("entry_unknown", shed -> {
            shed.does(shed.openDay());
            shed.at("10:00").does(new Act.DoOther("bo", Kind.TRAINING));
            shed.at("11:00").does(new Act.Stop("bo", false));
            String entry = shed.day().entries().get(0).id();
            shed.does(right(Optional.of(entry), "bo", training, "10:10", "10:50"));
            shed.assertRefused("entry_unknown", right(Optional.of(entry), "bo", training, "10:20", "10:50"));
            shed.assertRefused("entry_unknown", right(Optional.of("C99"), "bo", training, "10:20", "10:50"));
        });
        cases.put("entry_still_open", shed -> {
            shed.does(shed.openDay());
            shed.at("10:00").does(new Act.DoOther("bo", Kind.TRAINING));
            String entry = shed.day().entries().get(0).id();
            shed.at("11:00");
            shed.assertRefused("entry_still_open", right(Optional.of(entry), "bo", training, "10:10", "10:50"));
            String presence =
                    Presences.of(shed.day().opening().orElseThrow()).get(1).id();
            shed.assertRefused(
                    "entry_still_open", right(Optional.of(presence), "bo", new Activity.AtWork(), "06:30", "10:50"));
        });
        cases.put("entries_overlap", shed -> {
            shed.does(shed.openDay());
            shed.at("10:00").does(new Act.DoOther("bo", Kind.TRAINING));
            shed.at("11:00").does(new Act.Stop("bo", false));
            shed.at("12:00");
            shed.assertRefused("entries_overlap", right("bo", new OtherWork(Kind.PAPERWORK), "10:59", "11:30"));
            shed.assertRefused("entries_overlap", right("bo", new Activity.AtWork(), "06:00", "07:01"));
            shed.does(right("bo", new OtherWork(Kind.PAPERWORK), "11:00", "11:30"));
            shed.does(right("bo", new Activity.AtWork(), "06:00", "07:00"));
        });
    }

    private static void errands(Map<String, Consumer<Shed>> cases) {
        cases.put("errand_is_over", shed -> {
            shed.does(shed.openDay());
            shed.at("10:00").assertRefused("errand_is_over", errand("bo", "09:00", 60));
        });
        cases.put("minutes_below_one", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("minutes_below_one", errand("bo", "11:00", 0));
        });
        cases.put("errand_unknown", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("errand_unknown", new Act.RunErrand("E1"));
            shed.does(errand("bo", "11:00", 30));
            String id = shed.day().errands().get(0).id();
            shed.does(new Act.DropErrand(id));
            shed.assertRefused("errand_unknown", new Act.RunErrand(id));
        });
    }

    private static Act errand(String person, String from, int minutes) {
        return new Act.PlanErrand(person, Kind.FETCHING, Shed.time(from), minutes, "the quad at Tarn");
    }

    private static void charges(Map<String, Consumer<Shed>> cases) {
        cases.put("line_unknown", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("line_unknown", new Act.AgreeHours(shed.quad(), "L99", 60));
        });
        cases.put("line_is_ours", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.does(new Act.AddWork(quad, List.of(new Act.Wanted("brakes", Payer.OWN_ACCOUNT))));
            String line = shed.visit(quad).lines().get(1).id();
            shed.assertRefused("line_is_ours", new Act.AgreeHours(quad, line, 60));
        });
        cases.put("minutes_below_nothing", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            String line = shed.visit(quad).lines().get(0).id();
            shed.assertRefused("minutes_below_nothing", new Act.AgreeHours(quad, line, -1));
            shed.does(new Act.AgreeHours(quad, line, 0));
        });
    }

    private static void opening(Map<String, Consumer<Shed>> cases) {
        cases.put("day_already_open", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("day_already_open", shed.openDay());
        });
        cases.put("day_not_open", shed -> {
            String quad = shed.quad();
            shed.assertRefused("day_not_open", Shed.start("ada", quad, "in-underside"));
            shed.assertRefused("day_not_open", new Act.CloseDay("ada"));
            shed.assertRefused("day_not_open", new Act.BeHere("ada", Shed.time("12:00")));
            shed.assertRefused("day_not_open", new Act.CheckHoist(Shed.checked("H1")));
        });
        cases.put("day_already_closed", shed -> {
            shed.does(shed.openDay());
            shed.does(new Act.Stop("bo", true));
            shed.does(new Act.Stop("cy", true));
            shed.does(new Act.CloseDay("ada"));
            shed.assertRefused("day_already_closed", new Act.CloseDay("ada"));
            shed.assertRefused("day_already_closed", new Act.DoOther("ada", Kind.TRAINING));
            shed.assertRefused("day_already_closed", new Act.BeHere("ada", Shed.time("12:00")));
            shed.assertRefused("day_already_closed", new Act.CheckHoist(Shed.checked("H1")));
        });
        cases.put(
                "nobody_here", shed -> shed.assertRefused("nobody_here", new Act.OpenDay("ada", List.of(), List.of())));
        cases.put("person_unknown", shed -> {
            shed.assertRefused(
                    "person_unknown", new Act.OpenDay("ada", List.of(Shed.here("zoe", "07:00", "08:00")), List.of()));
            shed.assertRefused(
                    "person_unknown", new Act.OpenDay("zoe", List.of(Shed.here("ada", "07:00", "08:00")), List.of()));
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.assertRefused("person_unknown", Shed.start("zoe", quad, "in-underside"));
            shed.assertRefused("person_unknown", new Act.CloseDay("zoe"));
            shed.assertRefused("person_unknown", new Act.BeHere("zoe", Shed.time("12:00")));
            shed.assertRefused(
                    "person_unknown", new Act.SayPromise(quad, Shed.time("12:00"), "zoe", "Tarn", "", false));
        });
        cases.put(
                "stays_not_at_all",
                shed -> shed.assertRefused(
                        "stays_not_at_all",
                        new Act.OpenDay("ada", List.of(Shed.here("ada", "09:00", "09:00")), List.of())));
        cases.put("hoist_unknown", shed -> {
            List<Act.OpenDay.Here> ada = List.of(Shed.here("ada", "07:00", "16:00"));
            shed.assertRefused("hoist_unknown", new Act.OpenDay("ada", ada, List.of(Shed.checked("F"))));
            shed.does(shed.openDay());
            shed.assertRefused("hoist_unknown", new Act.CheckHoist(Shed.checked("H9")));
        });
        cases.put("until_is_over", shed -> {
            shed.does(shed.openDay());
            shed.at("10:00").assertRefused("until_is_over", new Act.BeHere("ada", Shed.time("10:00")));
            String quad = shed.quad();
            shed.at("14:00").assertRefused("until_is_over", Shed.hold(quad));
        });
        cases.put("still_clocked_on", shed -> {
            shed.does(shed.openDay());
            shed.does(new Act.DoOther("cy", Kind.CLEANING_SHOP));
            assertEquals(List.of("Cy"), shed.refuses(new Act.CloseDay("ada")).values());
            shed.assertRefused("still_clocked_on", new Act.CloseDay("ada"));
        });
    }

    private static void door(Map<String, Consumer<Shed>> cases) {
        cases.put(
                "machine_unknown",
                shed -> shed.assertRefused("machine_unknown", Shed.takeIn("quad-9", Shed.CLEAN, "oil")));
        cases.put(
                "class_unknown",
                shed -> shed.assertRefused("class_unknown", newMachine("submarine", "Reed", Optional.empty())));
        cases.put(
                "owner_unknown",
                shed -> shed.assertRefused("owner_unknown", newMachine("quad", "", Optional.of("O-z"))));
        cases.put(
                "owner_missing",
                shed -> shed.assertRefused("owner_missing", newMachine("quad", " ", Optional.empty())));
        cases.put("machine_booked", shed -> {
            shed.does(Shed.booking("quad-1", "09:00", "oil"));
            shed.assertRefused("machine_booked", Shed.takeIn("quad-1", Shed.CLEAN, "oil"));
        });
        cases.put("machine_here", shed -> {
            shed.quad();
            shed.assertRefused("machine_here", Shed.takeIn("quad-1", Shed.CLEAN, "oil"));
        });
        cases.put("nothing_wanted", shed -> shed.assertRefused("nothing_wanted", Shed.takeIn("quad-1", Shed.CLEAN)));
        cases.put(
                "work_unknown", shed -> shed.assertRefused("work_unknown", Shed.takeIn("quad-1", Shed.CLEAN, "wings")));
        cases.put(
                "work_not_for_class",
                shed -> shed.assertRefused("work_not_for_class", Shed.takeIn("tractor-1", Shed.CLEAN, "brakes")));
        cases.put("tag_out_of_range", shed -> {
            shed.assertRefused("tag_out_of_range", tagged(0));
            shed.assertRefused("tag_out_of_range", tagged(1000));
            shed.does(tagged(999));
        });
        cases.put("tag_taken", shed -> {
            shed.quad();
            shed.assertRefused(
                    "tag_taken",
                    Shed.takeIn(
                            Act.TakeIn.Which.known("quad-2"),
                            Shed.nobodyNew(),
                            Shed.CLEAN,
                            OptionalInt.of(1),
                            Optional.empty(),
                            "oil"));
        });
        cases.put(
                "expected_is_over",
                shed -> shed.at("09:00").assertRefused("expected_is_over", Shed.booking("quad-1", "08:59", "oil")));
        cases.put("visit_unknown", shed -> {
            for (Act act : onVisit("V99")) {
                shed.assertRefused("visit_unknown", act);
            }
            shed.does(shed.openDay());
            shed.assertRefused("visit_unknown", Shed.start("ada", "V99", "wash"));
        });
        cases.put("not_booked", shed -> {
            String quad = shed.quad();
            shed.assertRefused("not_booked", new Act.Arrive(quad, Optional.empty(), OptionalInt.empty()));
            shed.assertRefused("not_booked", new Act.CallOff(quad, true));
        });
        cases.put(
                "not_done_yet",
                shed -> shed.assertRefused("not_done_yet", new Act.Collect(shed.quad(), Optional.empty())));
        cases.put("tell_not_to_ride", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.does(Shed.tick(quad, "steering", Mark.FIX));
            shed.worksThrough("ada", quad).works("bo", quad, "sign-off");
            shed.assertRefused("tell_not_to_ride", new Act.Collect(quad, Optional.empty()));
            shed.does(new Act.Collect(quad, Optional.of(Shed.handed())));
        });
    }

    private static void inspection(Map<String, Consumer<Shed>> cases) {
        cases.put("why_not_reached", shed -> {
            String quad = shed.quad();
            shed.assertRefused("why_not_reached", Shed.tick(quad, "frame", Mark.NOT_REACHED));
            shed.does(Shed.notReached(quad, "frame"));
        });
        cases.put("outside_limits", shed -> {
            String quad = shed.quad();
            shed.assertRefused("outside_limits", Shed.measured(quad, "battery", Mark.GOOD, 12.39));
            shed.assertRefused("outside_limits", Shed.measured(quad, "battery", Mark.GOOD, 12.91));
            shed.does(Shed.measured(quad, "battery", Mark.GOOD, 12.4));
            shed.does(Shed.measured(quad, "battery", Mark.WATCH, 11.9));
        });
        cases.put("handover_incomplete", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.worksThrough("ada", quad).works("bo", quad, "sign-off");
            shed.assertRefused(
                    "handover_incomplete",
                    new Act.Collect(quad, Optional.of(new Act.Collect.Handed("ada", " ", "all is well"))));
            shed.assertRefused(
                    "handover_incomplete",
                    new Act.Collect(quad, Optional.of(new Act.Collect.Handed("ada", "Tarn", ""))));
        });
        cases.put("who_was_asked", shed -> {
            String quad = shed.quad();
            shed.does(Shed.tick(quad, "pads", Mark.FIX));
            shed.assertRefused("who_was_asked", new Act.OwnerSaid(quad, "pads", OwnersWord.Answer.NO, "ada", ""));
        });
        cases.put(
                "no_fix_there",
                shed -> shed.assertRefused("no_fix_there", Shed.ownerSaid(shed.quad(), "pads", OwnersWord.Answer.YES)));
        cases.put("no_work_for_fix", shed -> {
            String quad = shed.quad();
            shed.does(Shed.tick(quad, "frame", Mark.FIX));
            shed.assertRefused("no_work_for_fix", Shed.ownerSaid(quad, "frame", OwnersWord.Answer.YES));
        });
        cases.put("owner_said_yes", shed -> {
            String quad = shed.quad();
            shed.does(Shed.tick(quad, "pads", Mark.FIX));
            shed.does(Shed.ownerSaid(quad, "pads", OwnersWord.Answer.LATER));
            shed.does(Shed.ownerSaid(quad, "pads", OwnersWord.Answer.YES));
            shed.assertRefused("owner_said_yes", Shed.ownerSaid(quad, "pads", OwnersWord.Answer.NO));
        });
    }

    private static List<Act> onVisit(String id) {
        return List.of(
                new Act.Arrive(id, Optional.empty(), OptionalInt.empty()),
                new Act.Collect(id, Optional.empty()),
                new Act.CallOff(id, true),
                Shed.promise(id, "12:00", "", false),
                new Act.Pause(id, "wash"),
                Shed.finish("ada", id, "wash"),
                new Act.HandOver(id, "wash", "bo"),
                Shed.tick(id, "pads", Mark.GOOD),
                Shed.hold(id),
                new Act.Release(id),
                new Act.AddWork(id, List.of()));
    }

    private static Act.TakeIn newMachine(String classId, String name, Optional<String> ownerId) {
        return Shed.takeIn(
                new Act.TakeIn.Which(Optional.empty(), classId, "a machine", OptionalInt.empty(), ""),
                new Act.TakeIn.Whose(ownerId, name, ""),
                Shed.CLEAN,
                OptionalInt.empty(),
                Optional.empty(),
                "oil");
    }

    private static Act.TakeIn tagged(int tag) {
        return Shed.takeIn(
                Act.TakeIn.Which.known("quad-1"),
                Shed.nobodyNew(),
                Shed.CLEAN,
                OptionalInt.of(tag),
                Optional.empty(),
                "oil");
    }

    private static void promises(Map<String, Consumer<Shed>> cases) {
        cases.put("promise_is_over", shed -> {
            String quad = shed.quad();
            shed.at("12:00").assertRefused("promise_is_over", Shed.promise(quad, "11:59", "", false));
        });
        cases.put("nothing_to_promise", shed -> {
            String booked = shed.does(Shed.booking("quad-1", "09:00", "oil")).orElseThrow();
            shed.does(new Act.CallOff(booked, false));
            shed.assertRefused("nothing_to_promise", Shed.promise(booked, "12:00", "", false));
        });
        cases.put("why_changed", shed -> {
            String quad = shed.quad();
            shed.does(Shed.promise(quad, "12:00", "", false));
            shed.assertRefused("why_changed", Shed.promise(quad, "13:00", " ", false));
        });
        cases.put("plan_is_stale", shed -> {
            shed.does(shed.openDay());
            Plan nothing = new Plan(0, 0, List.of(), List.of(), List.of(), 0, 0, 0);
            shed.quad();
            shed.assertRefused(
                    "plan_is_stale",
                    new Act.Post(new Posted(nothing, shed.day().origin().minusSeconds(24 * 3600))));
            shed.assertRefused("plan_is_stale", new Act.Post(shed.day().posted().orElseThrow()));
        });
    }

    private static void floor(Map<String, Consumer<Shed>> cases) {
        cases.put("not_here_yet", shed -> {
            shed.does(shed.openDay());
            String booked = shed.does(Shed.booking("quad-1", "09:00", "oil")).orElseThrow();
            shed.assertRefused("not_here_yet", Shed.start("ada", booked, "in-underside"));
            shed.assertRefused("not_here_yet", Shed.tick(booked, "pads", Mark.GOOD));
        });
        cases.put("is_held", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.does(Shed.hold(quad));
            shed.assertRefused("is_held", Shed.start("ada", quad, "in-underside"));
        });
        cases.put("is_done", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.worksThrough("ada", quad).works("ada", quad, "sign-off");
            shed.assertRefused("is_done", Shed.start("ada", quad, "sign-off"));
            shed.assertRefused("is_done", new Act.AddWork(quad, List.of()));
        });
        cases.put("task_unknown", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.assertRefused("task_unknown", Shed.start("ada", quad, "polish"));
            shed.assertRefused("task_unknown", new Act.Pause(quad, "polish"));
        });
        cases.put("task_done", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.works("ada", quad, "in-underside");
            shed.assertRefused("task_done", Shed.start("ada", quad, "in-underside"));
        });
        cases.put("task_running", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.does(Shed.start("ada", quad, "in-underside"));
            shed.assertRefused("task_running", Shed.start("bo", quad, "in-underside"));
            shed.assertRefused("task_running", new Act.HandOver(quad, "in-underside", "ada"));
        });
        cases.put("person_not_here", shed -> {
            shed.does(new Act.OpenDay("ada", List.of(Shed.here("ada", "07:00", "16:00")), shed.bothChecked()));
            String quad = shed.quad();
            shed.assertRefused("person_not_here", Shed.start("bo", quad, "in-underside"));
            shed.assertRefused("person_not_here", new Act.DoOther("bo", Kind.TRAINING));
            shed.assertRefused("person_not_here", new Act.Stop("bo", true));
            shed.does(Shed.start("ada", quad, "in-underside"));
            shed.assertRefused("person_not_here", new Act.HandOver(quad, "in-underside", "bo"));
            shed.assertRefused("person_not_here", Shed.finish("bo", quad, "in-underside"));
        });
        cases.put("skill_missing", shed -> {
            shed.does(shed.openDay());
            String quad = shed.does(Shed.takeIn("quad-1", Shed.CLEAN, "brakes")).orElseThrow();
            shed.works("ada", quad, "in-underside", "raise").does(Shed.start("ada", quad, "pads-change"));
            shed.assertRefused("skill_missing", new Act.HandOver(quad, "pads-change", "cy"));
            shed.does(new Act.Pause(quad, "pads-change"));
            shed.assertRefused("skill_missing", Shed.start("cy", quad, "pads-change"));
        });
        cases.put("own_work", shed -> {
            shed.does(shed.openDay());
            String quad = shed.does(Shed.takeIn("quad-1", Shed.CLEAN, "brakes")).orElseThrow();
            shed.worksThrough("ada", quad);
            shed.assertRefused("own_work", Shed.start("ada", quad, "sign-off"));
            shed.does(Shed.start("bo", quad, "sign-off"));
            shed.assertRefused("own_work", new Act.HandOver(quad, "sign-off", "ada"));
        });
        cases.put("not_yet", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.assertRefused("not_yet", Shed.start("ada", quad, "raise"));
            shed.assertRefused("not_yet", Shed.start("ada", quad, "in-topside"));
            assertEquals(
                    List.of("sign_off", "drive_in"),
                    shed.refuses(Shed.start("ada", quad, "sign-off")).values());
        });
        cases.put("not_running", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.assertRefused("not_running", new Act.Pause(quad, "in-underside"));
            shed.assertRefused("not_running", Shed.finish("ada", quad, "in-underside"));
            shed.assertRefused("not_running", new Act.HandOver(quad, "in-underside", "bo"));
        });
        cases.put("points_open", shed -> {
            shed.does(shed.openDay());
            String quad = shed.does(Shed.takeIn("quad-1", Shed.CLEAN, "brakes")).orElseThrow();
            shed.works("ada", quad, "in-underside", "raise");
            shed.does(Shed.start("ada", quad, "inspect-underside"));
            shed.does(Shed.tick(quad, "pads", Mark.GOOD));
            Act plain = new Act.Finish("ada", quad, "inspect-underside", Optional.empty());
            assertEquals(List.of("1", "frame"), shed.refuses(plain).values());
            shed.assertRefused("points_open", plain);
            shed.does(Shed.tick(quad, "frame", Mark.WATCH));
            shed.does(plain);
        });
    }

    private static void places(Map<String, Consumer<Shed>> cases) {
        cases.put("no_place_free", shed -> {
            shed.does(shed.openDay());
            shed.does(new Act.CheckHoist(Shed.lockedOut("H1")));
            shed.does(new Act.CheckHoist(Shed.lockedOut("H2")));
            shed.assertRefused("no_place_free", Shed.start("ada", shed.quad(), "in-underside"));
        });
        cases.put("stands_elsewhere", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.does(Shed.startIn("H1", "ada", quad, "in-underside"));
            shed.does(Shed.finish("ada", quad, "in-underside"));
            shed.assertRefused("stands_elsewhere", Shed.startIn("H2", "ada", quad, "raise"));
        });
        cases.put("place_unknown", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("place_unknown", Shed.startIn("Z", "ada", shed.quad(), "in-underside"));
        });
        cases.put("place_wrong_kind", shed -> {
            shed.does(shed.openDay());
            shed.assertRefused("place_wrong_kind", Shed.startIn("F", "ada", shed.quad(), "in-underside"));
        });
        cases.put("hoist_overloaded", shed -> {
            shed.does(shed.openDay());
            String tractor =
                    shed.does(Shed.takeIn("tractor-1", Shed.CLEAN, "oil")).orElseThrow();
            Act tooHeavy = Shed.startIn("H1", "ada", tractor, "in-underside");
            shed.assertRefused("hoist_overloaded", tooHeavy);
            assertEquals(
                    List.of("light hoist", "500", "1 (Tarn)", "1500"),
                    shed.refuses(tooHeavy).values());
        });
        cases.put("hoist_not_checked", shed -> {
            shed.does(new Act.OpenDay("ada", List.of(Shed.here("ada", "07:00", "16:00")), List.of(Shed.checked("H1"))));
            String quad = shed.quad();
            shed.assertRefused("hoist_not_checked", Shed.startIn("H2", "ada", quad, "in-underside"));
            shed.does(new Act.CheckHoist(Shed.lockedOut("H1")));
            shed.assertRefused("hoist_not_checked", Shed.startIn("H1", "ada", quad, "in-underside"));
        });
        cases.put("place_taken", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            String other = shed.does(Shed.takeIn("quad-2", Shed.CLEAN, "oil")).orElseThrow();
            shed.does(Shed.startIn("H1", "ada", quad, "in-underside"));
            shed.assertRefused("place_taken", Shed.startIn("H1", "bo", other, "in-underside"));
        });
    }

    private static void machine(Map<String, Consumer<Shed>> cases) {
        cases.put(
                "point_unknown",
                shed -> shed.assertRefused("point_unknown", Shed.tick(shed.quad(), "wings", Mark.GOOD)));
        cases.put("fix_stands", shed -> {
            String quad = shed.quad();
            shed.does(Shed.tick(quad, "frame", Mark.FIX));
            Act slip = new Act.Tick("cy", quad, "frame", Mark.GOOD, OptionalDouble.empty(), "");
            shed.assertRefused("fix_stands", slip);
            shed.does(Shed.tick(quad, "frame", Mark.GOOD));
        });
        cases.put("nothing_to_hold", shed -> {
            String quad = shed.quad();
            shed.does(Shed.hold(quad));
            shed.assertRefused("nothing_to_hold", Shed.hold(quad));
        });
        cases.put("not_held", shed -> shed.assertRefused("not_held", new Act.Release(shed.quad())));
    }

    private static void register(Map<String, Consumer<Shed>> cases) {
        cases.put("year_impossible", shed -> {
            shed.assertRefused("year_impossible", corrected(2028, 300));
            shed.assertRefused("year_impossible", corrected(1899, 300));
            shed.does(corrected(2027, 300));
        });
        cases.put("mass_impossible", shed -> shed.assertRefused("mass_impossible", corrected(2020, 0)));
        cases.put("mass_while_in_hand", shed -> {
            shed.does(shed.openDay());
            String quad = shed.quad();
            shed.does(corrected(2020, 310));
            shed.does(Shed.startIn("H1", "ada", quad, "in-underside"));
            shed.assertRefused("mass_while_in_hand", corrected(2020, 4000));
            shed.does(corrected(2021, 310));
        });
        cases.put(
                "merge_with_itself",
                shed -> shed.assertRefused("merge_with_itself", new Act.MergeMachines("quad-1", "quad-1")));
        cases.put("both_here", shed -> {
            shed.does(Shed.takeIn("quad-1", Shed.CLEAN, "oil"));
            shed.does(Shed.takeIn("quad-2", Shed.CLEAN, "oil"));
            shed.assertRefused("both_here", new Act.MergeMachines("quad-1", "quad-2"));
        });
        cases.put("merge_other_class", shed -> {
            shed.does(Shed.takeIn("tractor-1", Shed.CLEAN, "oil"));
            shed.assertRefused("merge_other_class", new Act.MergeMachines("quad-1", "tractor-1"));
            shed.does(Shed.takeIn("quad-1", Shed.CLEAN, "oil"));
            shed.does(new Act.CorrectMachine("quad-2", "", OptionalInt.empty(), "", 400));
            shed.assertRefused("merge_other_class", new Act.MergeMachines("quad-2", "quad-1"));
        });
        cases.put("owner_machine_here", shed -> {
            shed.quad();
            shed.assertRefused("owner_machine_here", new Act.ForgetOwner("O-a"));
        });
        cases.put("owner_forgotten", shed -> {
            shed.does(new Act.ForgetOwner("O-a"));
            shed.assertRefused("owner_forgotten", new Act.ForgetOwner("O-a"));
        });
    }

    private static Act corrected(int year, int massKg) {
        return new Act.CorrectMachine("quad-1", "Trudge", OptionalInt.of(year), "", massKg);
    }

    static Set<String> names() {
        return CASES.keySet();
    }

    @ParameterizedTest
    @MethodSource("names")
    void an_act_that_cannot_be_is_refused_with_its_reason(String name) {
        CASES.get(name).accept(Shed.closed());
    }

    @Test
    void no_reason_of_the_bundle_is_without_its_case() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("src/main/resources/org/shedboard/words/words.properties"));
        Set<String> names = new TreeSet<>();
        boolean inSection = false;
        for (String line : lines) {
            if (line.startsWith("# ---")) {
                inSection = line.contains("what an act cannot do");
            } else if (inSection && !line.isBlank()) {
                names.add(line.substring(0, line.indexOf(' ')));
            }
        }
        assertFalse(names.isEmpty());
        assertEquals(names, new TreeSet<>(CASES.keySet()));
        assertTrue(names.contains("day_already_open"));
    }
}
