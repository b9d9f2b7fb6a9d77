package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.day.Act;
import org.shedboard.day.AsSeen;
import org.shedboard.day.Day;
import org.shedboard.day.Outcome;
import org.shedboard.day.Outlook;
import org.shedboard.day.WhatIf;
import org.shedboard.shop.Place;
import org.shedboard.store.Address;

/** A change that was tried is saved whole or not at all. */
class WhatIfKeptTest {
    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 5, 12, 9, 40);

    @TempDir
    Path directory;

    private Path home;

    @BeforeEach
    void prepare() throws IOException {
        home = directory.resolve("home");
        CommandRoom.withDemonstration(home);
    }

    private Workshop open() {
        return Workshop.open(new Address.InHome(Homes.demonstration(home)), "test", Optional.of(MORNING));
    }

    private static Act lockOut(Day day) {
        Place hoist = day.shop().hoists().get(0);
        return new Act.CheckHoist(new Act.OpenDay.Checked(hoist.id(), day.inCharge(), Optional.of("hose")));
    }

    @Test
    void what_is_kept_is_in_the_records_as_it_was_shown() {
        try (Workshop workshop = open()) {
            Day day = workshop.day();
            Instant now = workshop.now();
            String second = day.shop().people().get(1).id();
            WhatIf whatIf = new WhatIf(List.of(lockOut(day), new Act.BeHere(second, day.instantOf(11 * 60))));
            WhatIf.Answer.Tried tried = (WhatIf.Answer.Tried) whatIf.on(Outlook.of(day, now));
            assertTrue(workshop.keep(whatIf, day.inCharge()) instanceof Outcome.Done);
            Day after = workshop.day();
            assertEquals(tried.outlook().day().visits(), after.visits());
            assertEquals(
                    tried.outlook().plan().tasks(),
                    Outlook.of(after, now).plan().tasks());
            assertFalse(after.opening()
                    .orElseThrow()
                    .isChecked(day.shop().hoists().get(0).id()));
        }
    }

    @Test
    void where_the_last_act_cannot_be_nothing_of_the_first_is_saved() {
        try (Workshop workshop = open()) {
            AsSeen seen = workshop.seen();
            Day day = seen.day();
            Act over = new Act.BeHere(day.inCharge(), workshop.now().minusSeconds(60));
            Outcome outcome = workshop.keep(new WhatIf(List.of(lockOut(day), over)), day.inCharge());
            assertTrue(outcome instanceof Outcome.Refused);
            assertFalse(workshop.hasMovedOn(seen));
            assertEquals(day.opening(), workshop.day().opening());
        }
    }
}
