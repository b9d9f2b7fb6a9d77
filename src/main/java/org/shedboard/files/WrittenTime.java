package org.shedboard.files;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** A moment as files and answers for other programs write it: ISO 8601, to the second, with the offset of the shop's zone. */
public final class WrittenTime {
    private WrittenTime() {}

    public static String of(ZoneId zone, Instant at) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                at.truncatedTo(ChronoUnit.SECONDS).atZone(zone));
    }
}
