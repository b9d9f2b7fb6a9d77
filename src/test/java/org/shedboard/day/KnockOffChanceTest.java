package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.chance.KnockOff;
import org.shedboard.pack.chance.KnockOffs;
import org.shedboard.shop.Mud;

/** How full the rest of a day is. */
class KnockOffChanceTest {
    private final Shed shed = Shed.open();

    private Optional<KnockOffChance> chance() {
        return KnockOffChance.of(shed.outlook());
    }

    @Test
    void a_day_without_work_or_not_open_says_nothing_of_knock_off() {
        assertEquals(Optional.empty(), chance());
        Shed closed = Shed.closed();
        assertEquals(Optional.empty(), KnockOffChance.of(closed.outlook()));
    }

    @Test
    void a_day_with_little_work_is_over_in_time_for_sure_and_hangs_on_nothing() {
        shed.does(Shed.takeIn("quad-1", Mud.CLEAN, "oil"));
        KnockOffChance easy = chance().orElseThrow();
        assertEquals(100, easy.chance());
        assertEquals(0, easy.error());
        assertEquals(List.of(), easy.deciders());
    }

    @Test
    void the_chance_and_its_error_are_those_of_the_drawn_days_in_a_hundred() {
        fillUntilUnsure();
        KnockOffChance chance = chance().orElseThrow();
        Outlook outlook = shed.outlook();
        KnockOff today =
                KnockOffs.of(outlook.problem(), outlook.plan(), 1000, 1).days().get(0);
        assertEquals(0, today.day());
        assertEquals(outlook.day().instantOf(today.minute()), chance.at());
        assertEquals(100 * today.chance(), chance.chance(), 0.5);
        assertEquals(100 * today.error(), chance.error(), 1e-9);
    }

    @Test
    void what_it_hangs_on_is_named_with_its_step_the_most_first() {
        fillUntilUnsure();
        KnockOffChance chance = chance().orElseThrow();
        assertTrue(!chance.deciders().isEmpty(), chance::toString);
        int before = 100;
        for (KnockOffChance.Decider decider : chance.deciders()) {
            assertTrue(shed.visit(decider.visitId()).stays().stream()
                    .anyMatch(stay -> stay.step() == decider.step() && !stay.isDone()));
            assertTrue(decider.points() >= 2 && decider.points() <= before, chance::toString);
            assertTrue(decider.points() > 2 * decider.error() - 1, chance::toString);
            before = decider.points();
        }
    }

    @Test
    void after_knock_off_nothing_is_said_of_it() {
        fillUntilUnsure();
        Shed evening = shed.at("20:00");
        assertEquals(Optional.empty(), KnockOffChance.of(evening.outlook()));
    }

    /** So late in the day that one muddy machine may or may not be done by knock-off. */
    private void fillUntilUnsure() {
        shed.does(Shed.takeIn("quad-1", Mud.CAKED, "oil"));
        for (int minute = 12 * 60 + 30; minute < 16 * 60; minute += 5) {
            shed.at(String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60));
            if (chance().filter(each -> each.chance() > 30 && each.chance() < 80)
                    .isPresent()) {
                return;
            }
        }
        throw new IllegalStateException("the day never gets tight");
    }
}
