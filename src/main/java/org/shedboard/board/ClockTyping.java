package org.shedboard.board;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shedboard.day.Refusal;
import org.shedboard.words.When;

/**
 * Reads times on the shop's clock for a date, as people type them: {@code 10:15-10:50}, each as {@link Times} has it.
 *
 * <p>An end that is not later than the beginning is of the next day. A time that summer time skips does not exist and is refused; one
 * that it repeats is asked for with {@code first} or {@code second} after it.
 */
public final class ClockTyping {
    private static final String FIRST = "first";
    private static final String SECOND = "second";

    /** What was typed, read: a value, or why there is none. */
    public record Read<T>(Optional<T> value, Optional<Refusal> fault) {
        static <T> Read<T> of(T value) {
            return new Read<>(Optional.of(value), Optional.empty());
        }

        static <T> Read<T> fault(String name, String typed) {
            return new Read<>(Optional.empty(), Optional.of(new Refusal(name, List.of(typed))));
        }
    }

    /** From one moment to another. */
    public record FromTo(Instant from, Instant to) {}

    private ClockTyping() {}

    /** As it would be typed. */
    static String typed(Instant from, Instant to, ZoneId zone) {
        return typed(from, zone) + "-" + typed(to, zone);
    }

    private static String typed(Instant at, ZoneId zone) {
        LocalDateTime local = LocalDateTime.ofInstant(at, zone);
        List<ZoneOffset> offsets = offsets(local, zone);
        String time = When.CLOCK.say(local);
        if (offsets.size() < 2) {
            return time;
        }
        return time + " " + (at.equals(local.toInstant(offsets.get(0))) ? FIRST : SECOND);
    }

    /** The moments at which the shop's clock shows this, in order: one, none where it is skipped, two where it is repeated. */
    private static List<ZoneOffset> offsets(LocalDateTime local, ZoneId zone) {
        ZoneOffset early = local.atZone(zone).withEarlierOffsetAtOverlap().getOffset();
        ZoneOffset late = local.atZone(zone).withLaterOffsetAtOverlap().getOffset();
        boolean isSkipped = !local.atZone(zone).toLocalDateTime().equals(local);
        if (isSkipped) {
            return List.of();
        }
        return early.equals(late) ? List.of(early) : List.of(early, late);
    }

    public static Read<FromTo> fromTo(String typed, LocalDate date, ZoneId zone) {
        String[] ends = typed.split("-", -1);
        if (ends.length != 2) {
            return Read.fault("form.span_unread", typed.strip());
        }
        Read<Instant> from = at(ends[0], date, zone);
        if (from.value().isEmpty()) {
            return new Read<>(Optional.empty(), from.fault());
        }
        Read<Instant> to = at(ends[1], date, zone);
        if (to.value().isPresent() && !to.value().get().isAfter(from.value().get())) {
            to = at(ends[1], date.plusDays(1), zone);
        }
        return to.value().isEmpty()
                ? new Read<>(Optional.empty(), to.fault())
                : Read.of(new FromTo(from.value().get(), to.value().get()));
    }

    /** When something ended that began at a moment: a time of the day on which it began, or of the next one where that is earlier. */
    public static Read<Instant> ended(String typed, Instant began, ZoneId zone) {
        LocalDate date = LocalDate.ofInstant(began, zone);
        Read<Instant> same = at(typed, date, zone);
        return same.value().filter(at -> at.isBefore(began)).isPresent() ? at(typed, date.plusDays(1), zone) : same;
    }

    /** A time of that date. */
    public static Read<Instant> at(String typed, LocalDate date, ZoneId zone) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        boolean isFirst = text.endsWith(FIRST);
        boolean isSecond = text.endsWith(SECOND);
        String clock = isFirst || isSecond ? text.substring(0, text.lastIndexOf(isFirst ? FIRST : SECOND)) : text;
        Optional<LocalTime> time = Times.time(clock);
        if (time.isEmpty()) {
            return Read.fault("form.time_unread", typed.strip());
        }
        LocalDateTime local = date.atTime(time.get());
        List<ZoneOffset> offsets = offsets(local, zone);
        if (offsets.isEmpty()) {
            return Read.fault("form.time_skipped", When.CLOCK.say(local));
        }
        if (offsets.size() == 2 && !isFirst && !isSecond) {
            return Read.fault("form.time_twice", When.CLOCK.say(local));
        }
        return Read.of(local.toInstant(offsets.get(isSecond ? offsets.size() - 1 : 0)));
    }
}
