package org.shedboard.day;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Opening;

/** Who was in the shop on a day, told as clock entries, so that hours are counted and corrected in one way. */
public final class Presences {
    private Presences() {}

    /**
     * The presences of one day. Their ids say the date and count them from 1, so that a correction can name one:
     * {@code A2026-05-12.3}.
     */
    public static List<ClockEntry> of(Opening opening) {
        List<ClockEntry> entries = new ArrayList<>();
        for (Attendance attendance : opening.attendances()) {
            entries.add(new ClockEntry(
                    "A%s.%s".formatted(opening.date(), entries.size() + 1),
                    attendance.personId(),
                    new Activity.AtWork(),
                    attendance.from(),
                    attendance.left()));
        }
        return entries;
    }
}
