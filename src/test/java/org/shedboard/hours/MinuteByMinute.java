package org.shedboard.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.shedboard.hours.Activity.Break;
import org.shedboard.hours.Activity.Lent;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.CountedDay.Minute;
import org.shedboard.hours.Rounding.Direction;
import org.shedboard.hours.Stretch.Use;
import org.shedboard.shop.Window;

/**
 * Hours counted the slow way, from the shop's rules and not from the tally: each minute of a person's day is asked what it was. It
 * takes the tally's values, so that the two can be compared, and calls nothing of it that decides anything.
 */
final class MinuteByMinute {
    /**
     * A row that counts.
     *
     * @param from its first minute, counted from 1970
     * @param to the minute after its last one; that of now while it is open
     */
    private record Row(ClockEntry entry, long from, long to) {
        boolean has(long minute) {
            return from <= minute && minute < to;
        }

        long length() {
            return to - from;
        }

        boolean isMoreThanPresence() {
            return !(entry.activity() instanceof Activity.AtWork);
        }

        boolean isLaterThan(Row other) {
            int begins = entry.from().compareTo(other.entry.from());
            return begins > 0 || begins == 0 && entry.id().compareTo(other.entry.id()) > 0;
        }

        /** Clocked on or off there, which nobody does who is on a break. */
        boolean turnsWithin(long begin, long end) {
            boolean begins = begin < from && from < end;
            boolean ends = entry.to().isPresent() && begin < to && to < end;
            return begins || ends;
        }
    }

    private static final Minute NOTHING_CLOCKED = new Minute(Use.UNACCOUNTED, Optional.empty(), false);

    private final TimeBook book;
    private final Instant now;
    private final List<ClockEntry> standing;
    private final List<Row> rows;

    MinuteByMinute(TimeBook book, Instant now) {
        this.book = book;
        this.now = now;
        this.standing = book.rows().stream().filter(this::stands).toList();
        this.rows = standing.stream()
                .filter(entry -> !isForgotten(entry))
                .map(this::row)
                .toList();
    }

    private boolean stands(ClockEntry entry) {
        boolean isReplaced = book.rows().stream()
                .flatMap(other -> other.correction().stream())
                .anyMatch(correction -> correction.replaces().equals(Optional.of(entry.id())));
        boolean isStruck =
                entry.correction().isPresent() && entry.correction().get().isStruck();
        return !isReplaced && !isStruck;
    }

    private boolean isForgotten(ClockEntry entry) {
        return entry.to().isEmpty() && dateOf(entry.from()).isBefore(dateOf(now));
    }

    private Row row(ClockEntry entry) {
        return new Row(entry, minuteOf(entry.from()), minuteOf(entry.to().orElse(now)));
    }

    /** Everybody who has usual shifts or a row. */
    Set<String> people() {
        Set<String> people = new TreeSet<>(book.breaks().keySet());
        book.rows().forEach(row -> people.add(row.personId()));
        return people;
    }

    /** Ids of the entries left open on a day before today, and before that date. */
    Set<String> forgotten(LocalDate until) {
        Set<String> ids = new TreeSet<>();
        standing.stream()
                .filter(entry -> isForgotten(entry) && dateOf(entry.from()).isBefore(until))
                .forEach(entry -> ids.add(entry.id()));
        return ids;
    }

    /** Ids of the entries that another one took minutes from, on that day. */
    Set<String> overlapped(String person, LocalDate date) {
        Set<String> ids = new TreeSet<>();
        List<Row> theirs =
                rowsOf(person, date).stream().filter(Row::isMoreThanPresence).toList();
        long end = firstOf(date.plusDays(1));
        for (long minute = firstOf(date); minute < end && theirs.size() > 1; minute++) {
            for (Row row : theirs) {
                if (row.has(minute) && owner(theirs, minute).orElseThrow() != row) {
                    ids.add(row.entry.id());
                }
            }
        }
        return ids;
    }

    CountedDay day(String person, LocalDate date) {
        List<Row> theirs = rowsOf(person, date);
        Map<Long, Use> breaks = plannedBreaks(person, theirs, date);
        long first = firstOf(date);
        List<Optional<Minute>> minutes = new ArrayList<>();
        long end = firstOf(date.plusDays(1));
        for (long minute = first; minute < end; minute++) {
            minutes.add(minute(theirs, breaks, minute));
        }
        return new CountedDay(person, date, first, minutes, rounding(first, minutes));
    }

    private List<Row> rowsOf(String person, LocalDate date) {
        long first = firstOf(date);
        long end = firstOf(date.plusDays(1));
        return rows.stream()
                .filter(row -> row.from < end && first < row.to)
                .filter(row -> row.entry.personId().equals(person))
                .toList();
    }

    private Optional<Minute> minute(List<Row> theirs, Map<Long, Use> breaks, long minute) {
        boolean isPresent = false;
        for (Row row : theirs) {
            isPresent |= row.has(minute);
        }
        if (!isPresent) {
            return Optional.empty();
        }
        if (breaks.containsKey(minute)) {
            return Optional.of(new Minute(breaks.get(minute), Optional.empty(), false));
        }
        return Optional.of(owner(theirs, minute).map(this::minuteOn).orElse(NOTHING_CLOCKED));
    }

    /** The row whose minute it is. */
    private static Optional<Row> owner(List<Row> theirs, long minute) {
        Optional<Row> owner = Optional.empty();
        for (Row row : theirs) {
            if (row.has(minute) && row.isMoreThanPresence() && (owner.isEmpty() || row.isLaterThan(owner.get()))) {
                owner = Optional.of(row);
            }
        }
        return owner;
    }

    private Minute minuteOn(Row row) {
        Activity activity = row.entry.activity();
        if (activity instanceof Lent lent) {
            boolean isShort = row.length() < book.rules().lentMinutes();
            return new Minute(Use.ON_MACHINE, Optional.of(isShort ? lent.from() : lent.to()), isShort);
        }
        if (activity instanceof Break pause) {
            return new Minute(clockedBreak(row, pause.kind()), Optional.of(activity), false);
        }
        Use use = activity instanceof OtherWork ? Use.OTHER_WORK : Use.ON_MACHINE;
        return new Minute(use, Optional.of(activity), false);
    }

    private Use clockedBreak(Row row, Break.Kind kind) {
        if (kind == Break.Kind.REST) {
            return Use.REST;
        }
        boolean isFreeSoFar = kind == Break.Kind.OFF_DUTY || row.entry.to().isEmpty();
        return isFreeSoFar ? Use.FREE : meal(row.length());
    }

    private Use meal(long length) {
        if (length <= book.rules().breaks().restMinutes()) {
            return Use.REST;
        }
        return length >= book.rules().breaks().mealMinutes() ? Use.FREE : Use.REST_TO_SAY;
    }

    /** The minutes of planned breaks that were taken, whether or not the person was there. */
    private Map<Long, Use> plannedBreaks(String person, List<Row> theirs, LocalDate date) {
        Map<Long, Use> taken = new HashMap<>();
        if (book.rules().breaks().isPlannedTaken()) {
            for (Window gap : book.breaks().getOrDefault(person, List.of())) {
                take(gap, person, theirs, date, taken);
            }
        }
        return taken;
    }

    private void take(Window gap, String person, List<Row> theirs, LocalDate date, Map<Long, Use> taken) {
        long begin = minuteAt(date, gap.from());
        long end = minuteAt(date, gap.to());
        boolean isRest = end - begin <= book.rules().breaks().restMinutes();
        if (hasClocked(isRest, person, date)) {
            return;
        }
        long runBegin = begin;
        for (long minute = begin; minute <= end; minute++) {
            if (minute == end || isWorked(theirs, minute, begin, end)) {
                Use use = isRest ? Use.REST : meal(minute - runBegin);
                for (long each = runBegin; each < minute; each++) {
                    taken.put(each, use);
                }
                runBegin = minute + 1;
            }
        }
    }

    private static boolean isWorked(List<Row> theirs, long minute, long begin, long end) {
        return owner(theirs, minute)
                .filter(row ->
                        row.turnsWithin(begin, end) || row.entry.correction().isPresent())
                .isPresent();
    }

    private boolean hasClocked(boolean isRest, String person, LocalDate date) {
        return standing.stream()
                .filter(entry -> entry.personId().equals(person) && !isForgotten(entry))
                .filter(entry -> isRest
                        ? isBreak(entry, Break.Kind.REST)
                        : isBreak(entry, Break.Kind.MEAL) || isBreak(entry, Break.Kind.OFF_DUTY))
                .anyMatch(entry -> touches(entry, date));
    }

    private static boolean isBreak(ClockEntry entry, Break.Kind kind) {
        return entry.activity().equals(new Break(kind));
    }

    /** Whether it began on that day or has a moment of it, if only a second. */
    private boolean touches(ClockEntry entry, LocalDate date) {
        Instant midnight = midnight(date).toInstant();
        boolean lasts = !isForgotten(entry) && entry.to().orElse(now).isAfter(midnight);
        boolean began = entry.from().isBefore(midnight(date.plusDays(1)).toInstant());
        return began && (lasts || dateOf(entry.from()).equals(date));
    }

    /** Minutes that rounding gives to or takes from those attended. */
    private int rounding(long first, List<Optional<Minute>> minutes) {
        boolean[] paid = new boolean[minutes.size()];
        int at = 0;
        while (at < paid.length) {
            int begin = at;
            while (at < paid.length && minutes.get(at).isPresent()) {
                at++;
            }
            if (begin < at) {
                pay(paid, (int) (mark(first + begin, true) - first), (int) (mark(first + at, false) - first));
            }
            at++;
        }
        int rounding = 0;
        for (int i = 0; i < paid.length; i++) {
            boolean isFree =
                    minutes.get(i).filter(minute -> minute.use() == Use.FREE).isPresent();
            rounding += paid[i] && !isFree ? 1 : 0;
            rounding -= minutes.get(i).isPresent() && !isFree ? 1 : 0;
        }
        return rounding;
    }

    private static void pay(boolean[] paid, int from, int to) {
        for (int i = from; i < to; i++) {
            paid[i] = true;
        }
    }

    /** The mark of the clock on the wall to which somebody's coming or going is moved, looked for one minute after the other. */
    private long mark(long minute, boolean isComing) {
        boolean isUp = book.rules().attendance().direction() == Direction.UP;
        for (int away = 0; ; away++) {
            boolean later = !isUp || !isComing;
            boolean earlier = !isUp || isComing;
            if (later && isMark(minute + away)) {
                return minute + away;
            }
            if (earlier && isMark(minute - away)) {
                return minute - away;
            }
        }
    }

    private boolean isMark(long minute) {
        int onTheWall = instantOf(minute).atZone(book.zone()).getMinute();
        return onTheWall % unit() == 0;
    }

    private int unit() {
        return switch (book.rules().attendance().unit()) {
            case EXACT -> 1;
            case FIVE -> 5;
            case TENTH -> 6;
            case QUARTER -> 15;
        };
    }

    private long firstOf(LocalDate date) {
        return minuteOf(midnight(date).toInstant());
    }

    private ZonedDateTime midnight(LocalDate date) {
        return date.atStartOfDay(book.zone());
    }

    private long minuteAt(LocalDate date, LocalTime time) {
        return minuteOf(date.atTime(time).atZone(book.zone()).toInstant());
    }

    private LocalDate dateOf(Instant at) {
        return at.atZone(book.zone()).toLocalDate();
    }

    private static long minuteOf(Instant at) {
        return Math.floorDiv(at.getEpochSecond(), 60);
    }

    private static Instant instantOf(long minute) {
        return Instant.ofEpochSecond(60 * minute);
    }
}
