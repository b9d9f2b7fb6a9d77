package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.forecast.Explanation;
import org.shedboard.forecast.Explanation.Source;
import org.shedboard.forecast.Washed;
import org.shedboard.hours.HoursRules;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Visit;

/**
 * A muddy quad for its oil, in a shop that has learned nothing yet. By the catalogue it takes 24 minutes to wash it and to uncover
 * three points, driving onto the pad among them; 24 on the hoist, 14 on top and 21 for the drive and the papers.
 */
class WhySoLongTest {
    private static final int BY_CATALOGUE = 59;
    private static final int OF_MUD = 24;

    static Stream<Visit> visits() {
        return Demonstration.day().visits().stream();
    }

    private static Act.TakeIn muddy(Payer payer) {
        return new Act.TakeIn(
                Shed.nobodyNew(),
                Act.TakeIn.Which.known("quad-1"),
                Mud.MUDDY,
                Optional.empty(),
                Condition.SOUND,
                List.of(new Act.Wanted("oil", payer)),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                "",
                Optional.empty());
    }

    private static WhySoLong why(Shed shed, String visit) {
        return WhySoLong.of(shed.day(), shed.day().expectVisit(visit));
    }

    private static Washed washed(Payer payer, HoursRules.Basis basis) {
        Shed shed = Shed.open();
        HoursRules usual = HoursRules.USUAL;
        shed.with(shed.day()
                .books()
                .with(new HoursRules(usual.attendance(), usual.charge(), basis, usual.breaks(), usual.lentMinutes())));
        return why(shed, shed.does(muddy(payer)).orElseThrow()).washed().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("visits")
    void the_parts_of_every_visit_of_the_demonstration_add_up_to_its_likely_minutes(Visit visit) {
        Day day = Demonstration.day();
        Explanation explained = WhySoLong.of(day, visit).explained();
        assertEquals(
                day.forecastOf(visit).range().likely(),
                explained.parts().stream().mapToInt(Explanation.Part::minutes).sum());
    }

    @Test
    void the_catalogue_and_the_mud_are_told_apart() {
        Shed shed = Shed.open();
        WhySoLong why = why(shed, shed.does(muddy(Payer.OWNER)).orElseThrow());
        assertEquals(BY_CATALOGUE, why.explained().minutesFrom(Source.CATALOGUE));
        assertEquals(OF_MUD, why.explained().minutesFrom(Source.MUD));
        assertEquals(0, why.explained().minutesFrom(Source.PERSON));
        assertEquals(BY_CATALOGUE + OF_MUD, why.explained().catalogueAtPace());
    }

    @Test
    void work_that_was_added_when_it_had_begun_is_a_part_of_its_own() {
        Shed shed = Shed.open();
        String visit = shed.does(muddy(Payer.OWNER)).orElseThrow();
        shed.does(Shed.start("cy", visit, "in-wash"));
        shed.does(new Act.AddWork(visit, List.of(new Act.Wanted("brakes", Payer.OWNER))));
        WhySoLong why = why(shed, visit);
        assertEquals(30, why.explained().minutesFrom(Source.ADDED));
        assertEquals(BY_CATALOGUE, why.explained().minutesFrom(Source.CATALOGUE));
        assertTrue(why.washed().isEmpty(), "washing it first comes too late");
    }

    @Test
    void washing_it_first_is_what_a_clean_one_takes() {
        Shed shed = Shed.open();
        String muddy = shed.does(muddy(Payer.OWNER)).orElseThrow();
        String clean = shed.does(Shed.takeIn("quad-2", Mud.CLEAN, "oil")).orElseThrow();
        Washed washed = why(shed, muddy).washed().orElseThrow();
        assertEquals(why(shed, clean).explained().range().likely(), washed.likely());
        assertEquals(why(shed, muddy).explained().range().likely() - washed.likely(), washed.savedMinutes());
        assertTrue(why(shed, clean).washed().isEmpty(), "a clean one has nothing to save");
    }

    @Test
    void what_is_charged_by_the_estimate_is_less_by_the_catalogues_minutes_in_tenths() {
        // 83 minutes are charged as 84, 59 as 60
        assertEquals(24, washed(Payer.OWNER, HoursRules.Basis.ESTIMATED).savedChargeable());
        assertEquals(24, washed(Payer.MAKER, HoursRules.Basis.AGREED).savedChargeable());
    }

    @Test
    void what_is_charged_by_the_hours_worked_is_less_by_the_likely_minutes_in_tenths() {
        Washed washed = washed(Payer.OWNER, HoursRules.Basis.WORKED);
        int now = HoursRules.USUAL.charge().minutes(washed.likely() + washed.savedMinutes());
        assertEquals(now - HoursRules.USUAL.charge().minutes(washed.likely()), washed.savedChargeable());
        assertTrue(washed.savedChargeable() > 0);
    }

    @Test
    void nothing_less_is_paid_for_work_on_our_own_account_or_at_a_price_that_was_agreed() {
        assertEquals(0, washed(Payer.OWN_ACCOUNT, HoursRules.Basis.WORKED).savedChargeable());
        Shed shed = Shed.open();
        HoursRules usual = HoursRules.USUAL;
        shed.with(shed.day()
                .books()
                .with(new HoursRules(
                        usual.attendance(),
                        usual.charge(),
                        HoursRules.Basis.AGREED,
                        usual.breaks(),
                        usual.lentMinutes())));
        String visit = shed.does(muddy(Payer.OWNER)).orElseThrow();
        String line = shed.day().expectVisit(visit).lines().get(0).id();
        shed.does(new Act.AgreeHours(visit, line, 90));
        assertEquals(0, why(shed, visit).washed().orElseThrow().savedChargeable());
    }
}
