package org.shedboard.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.hours.Activity.Break;
import org.shedboard.hours.MinuteSet.Run;
import org.shedboard.hours.Stretch.Use;
import org.shedboard.shop.Window;

/**
 * Lays out one person's day.
 *
 * <p>A moment counts from the minute it falls in, so that entries that touch share no minute and lose none. What was clocked comes
 * first: where two entries share minutes, the one that began later has them. Who clocked something was in the shop for it. A planned
 * break cuts an entry that runs through it, for nobody clocks off for dinner; but an entry that begins or ends within the break was
 * worked there, and so was one that somebody wrote down in a correction. On a day with a clocked rest or meal, no planned one of its
 * sort is taken. What is left of the time in the shop is unaccounted.
 */
final class DayCount {
    private final LocalDate date;
    private final HoursRules rules;
    private final ZoneId zone;
    private final Instant now;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<ClockEntry> overlapped = new ArrayList<>();
    private MinuteSet atWork = MinuteSet.NONE;

    /** The minutes of an entry that are its own. */
    private record Piece(ClockEntry entry, MinuteSet minutes) {}

    /** A planned break as it was taken. */
    private record Taken(Break.Kind kind, Run run) {}

    /**
     * @param entries those that stand and touch the day, of one person
     * @param now the end of an entry that is open; one that was open at an earlier midnight counts nothing
     */
    DayCount(LocalDate date, List<ClockEntry> entries, HoursRules rules, ZoneId zone, Instant now) {
        this.date = date;
        this.rules = rules;
        this.zone = zone;
        this.now = now;
        entries.stream()
                .filter(ClockEntry::isAtWork)
                .forEach(entry -> atWork = atWork.plus(MinuteSet.of(from(entry), to(entry))));
        MinuteSet covered = MinuteSet.NONE;
        List<ClockEntry> others = entries.stream()
                .filter(entry -> !entry.isAtWork())
                .sorted(LATEST_FIRST)
                .toList();
        for (ClockEntry entry : others) {
            MinuteSet own = MinuteSet.of(from(entry), to(entry));
            if (!own.and(covered).isEmpty()) {
                overlapped.add(entry);
            }
            pieces.add(0, new Piece(entry, own.minus(covered)));
            covered = covered.plus(own);
        }
    }

    private static final Comparator<ClockEntry> LATEST_FIRST =
            Comparator.comparing(ClockEntry::from).thenComparing(ClockEntry::id).reversed();

    private long from(ClockEntry entry) {
        return Math.max(midnight(date), minute(entry.from()));
    }

    private long to(ClockEntry entry) {
        return Math.min(midnight(date.plusDays(1)), minute(endOf(entry)));
    }

    private Instant endOf(ClockEntry entry) {
        if (entry.to().isPresent()) {
            return entry.to().get();
        }
        return TimeBook.isUnsettled(entry, zone, now) ? entry.from() : now;
    }

    private long midnight(LocalDate day) {
        return minute(day.atStartOfDay(zone).toInstant());
    }

    private static long minute(Instant at) {
        return Math.floorDiv(at.getEpochSecond(), 60L);
    }

    /** Entries that another one, begun later, runs into: the clock was put back, or records were written over each other. */
    List<ClockEntry> overlapped() {
        return overlapped;
    }

    /** @param breaks gaps between the person's usual shifts */
    PersonDay count(String personId, List<Window> breaks) {
        List<Taken> taken = rules.breaks().isPlannedTaken() ? taken(breaks) : List.of();
        MinuteSet cut = MinuteSet.union(taken.stream().map(Taken::run).toList());
        MinuteSet clocked = MinuteSet.union(pieces.stream()
                .flatMap(piece -> piece.minutes().runs().stream())
                .toList());
        MinuteSet present = atWork.plus(clocked);
        List<Stretch> stretches = new ArrayList<>();
        for (Piece piece : pieces) {
            add(stretches, piece.minutes().minus(cut), useOf(piece.entry()), piece.entry());
        }
        for (Taken one : taken) {
            MinuteSet within =
                    present.and(MinuteSet.of(one.run().from(), one.run().to()));
            add(stretches, within, useOf(one.kind(), one.run().minutes()));
        }
        add(stretches, present.minus(cut.plus(clocked)), Use.UNACCOUNTED);
        stretches.sort(Comparator.comparing(Stretch::from));
        return new PersonDay(personId, date, stretches, rounding(present, stretches));
    }

    private List<Taken> taken(List<Window> breaks) {
        List<Taken> taken = new ArrayList<>();
        for (Window window : breaks) {
            Run planned = new Run(
                    minute(date.atTime(window.from()).atZone(zone).toInstant()),
                    minute(date.atTime(window.to()).atZone(zone).toInstant()));
            Break.Kind kind = rules.breaks().plannedAs(planned.minutes());
            if (pieces.stream().noneMatch(piece -> standsFor(kind, piece.entry()))) {
                left(planned).runs().forEach(run -> taken.add(new Taken(kind, run)));
            }
        }
        return taken;
    }

    /** A break that nobody ended by midnight counts nothing, so it does not stand for the planned one either. */
    private boolean standsFor(Break.Kind planned, ClockEntry entry) {
        return entry.activity() instanceof Break clocked
                && (clocked.kind() == Break.Kind.REST) == (planned == Break.Kind.REST)
                && !TimeBook.isUnsettled(entry, zone, now);
    }

    /** What was not worked of a planned break. */
    private MinuteSet left(Run planned) {
        MinuteSet left = MinuteSet.of(planned.from(), planned.to());
        for (Piece piece : pieces) {
            left = isWorkedIn(planned, piece.entry()) ? left.minus(piece.minutes()) : left;
        }
        return left;
    }

    private boolean isWorkedIn(Run planned, ClockEntry entry) {
        boolean ends = entry.to().filter(to -> isWithin(planned, minute(to))).isPresent();
        return entry.correction().isPresent() || ends || isWithin(planned, minute(entry.from()));
    }

    private static boolean isWithin(Run planned, long minute) {
        return planned.from() < minute && minute < planned.to();
    }

    private Use useOf(ClockEntry entry) {
        if (entry.activity() instanceof Activity.OtherWork) {
            return Use.OTHER_WORK;
        }
        if (entry.activity() instanceof Break pause) {
            // a meal that goes on is a meal: how long it was shows when it is over
            return entry.isOpen() && pause.kind() == Break.Kind.MEAL
                    ? Use.FREE
                    : useOf(pause.kind(), minute(endOf(entry)) - minute(entry.from()));
        }
        return Use.ON_MACHINE;
    }

    private Use useOf(Break.Kind kind, long minutes) {
        return switch (rules.breaks().of(kind, minutes)) {
            case WORKED -> Use.REST;
            case FREE -> Use.FREE;
            case TO_SAY -> Use.REST_TO_SAY;
        };
    }

    private void add(List<Stretch> stretches, MinuteSet minutes, Use use) {
        minutes.runs().forEach(run -> stretches.add(stretch(run, use, Optional.empty(), false)));
    }

    private void add(List<Stretch> stretches, MinuteSet minutes, Use use, ClockEntry entry) {
        boolean isShort = minute(endOf(entry)) - minute(entry.from()) < rules.lentMinutes();
        Activity on = entry.activity();
        boolean stays = false;
        if (on instanceof Activity.Lent lent) {
            stays = isShort;
            on = stays ? lent.from() : lent.to();
        }
        for (Run run : minutes.runs()) {
            stretches.add(stretch(run, use, Optional.of(on), stays));
        }
    }

    private static Stretch stretch(Run run, Use use, Optional<Activity> on, boolean isLent) {
        return new Stretch(
                Instant.ofEpochSecond(60 * run.from()), Instant.ofEpochSecond(60 * run.to()), use, on, isLent);
    }

    /** Each coming and going is rounded; what comes to lie over one another counts once, and free time stays free. */
    private int rounding(MinuteSet present, List<Stretch> stretches) {
        MinuteSet free = MinuteSet.union(stretches.stream()
                .filter(stretch -> !stretch.use().isAttended())
                .map(stretch -> new Run(minute(stretch.from()), minute(stretch.to())))
                .toList());
        MinuteSet rounded = MinuteSet.union(present.runs().stream()
                .map(run -> new Run(
                        rules.attendance().arrival(run.from(), zone),
                        rules.attendance().leaving(run.to(), zone)))
                .toList());
        return (int) (rounded.minus(free).minutes() - present.minus(free).minutes());
    }
}
