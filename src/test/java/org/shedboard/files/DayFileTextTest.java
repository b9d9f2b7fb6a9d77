package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.ReplanDays;
import org.shedboard.pack.WorkshopDays;

class DayFileTextTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_day_that_was_written_is_read_as_it_was_seed(long seed) {
        Problem before = WorkshopDays.rich(8, WorkshopDays.FAIR, seed);
        Plan plan = PackedPlans.pack(before, seed, 200);
        for (ReplanDays.Event event : ReplanDays.Event.values()) {
            Problem day = ReplanDays.of(before, plan, event, seed);
            assertEquals(day, DayFile.read(DayFileText.write(day)).expectValue());
        }
        assertEquals(before, DayFile.read(DayFileText.write(before)).expectValue());
    }
}
