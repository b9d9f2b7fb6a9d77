package org.shedboard.tally;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.hours.MinuteSet;
import org.shedboard.shop.HoistCheck;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Place;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * How one hoist was used.
 *
 * @param used minutes of the open ones in which a machine stood on it, from its first task there to the end of its last one, or
 *     until it was worked on elsewhere
 * @param open minutes from the check that found it sound until it was locked out, or the day was closed
 */
public record HoistHours(Place hoist, int used, int open) {
    static List<HoistHours> of(Ledger ledger) {
        return ledger.books().shop().hoists().stream()
                .map(hoist -> of(ledger, hoist))
                .toList();
    }

    private static HoistHours of(Ledger ledger, Place hoist) {
        MinuteSet open = open(ledger, hoist);
        List<MinuteSet.Run> stood = new ArrayList<>();
        for (Visit visit : ledger.visits()) {
            for (int i = 0; i < visit.stays().size(); i++) {
                if (visit.stays().get(i).placeId().equals(Optional.of(hoist.id()))) {
                    stood(visit, i, ledger.now()).ifPresent(stood::add);
                }
            }
        }
        int used = (int) MinuteSet.union(stood).and(open).minutes();
        return new HoistHours(hoist, used, (int) open.minutes());
    }

    private static MinuteSet open(Ledger ledger, Place hoist) {
        MinuteSet open = MinuteSet.NONE;
        for (Opening opening : ledger.openings()) {
            Instant end = endOf(ledger, opening);
            for (int i = 0; i < opening.checks().size(); i++) {
                HoistCheck check = opening.checks().get(i);
                if (check.placeId().equals(hoist.id()) && check.isSound()) {
                    Instant until = nextCheck(opening, i).map(HoistCheck::at).orElse(end);
                    open = open.plus(MinuteSet.of(minute(check.at()), minute(until)));
                }
            }
        }
        return open;
    }

    private static Optional<HoistCheck> nextCheck(Opening opening, int index) {
        String hoist = opening.checks().get(index).placeId();
        return opening.checks().stream()
                .skip(index + 1L)
                .filter(check -> check.placeId().equals(hoist))
                .findFirst();
    }

    /** When the day was over for its hoists: closed, now, or at midnight where nobody closed it. */
    private static Instant endOf(Ledger ledger, Opening opening) {
        Instant midnight = opening.date()
                .plusDays(1)
                .atStartOfDay(ledger.books().shop().zone())
                .toInstant();
        Instant end = opening.closed().map(Opening.Closed::at).orElse(ledger.now());
        return end.isAfter(midnight) ? midnight : end;
    }

    private static Optional<MinuteSet.Run> stood(Visit visit, int index, Instant now) {
        Stay stay = visit.stays().get(index);
        Optional<Instant> began = first(stay);
        Optional<Instant> moved = visit.stays().stream()
                .skip(index + 1L)
                .flatMap(later -> first(later).stream())
                .min(Comparator.naturalOrder());
        Instant end = moved.orElse(stay.isDone() || !visit.state().isOpen() ? last(stay) : now);
        return began.map(from -> new MinuteSet.Run(minute(from), minute(end)));
    }

    private static Optional<Instant> first(Stay stay) {
        return stay.tasks().stream()
                .flatMap(task -> task.progress().began().stream())
                .min(Comparator.naturalOrder());
    }

    private static Instant last(Stay stay) {
        return stay.tasks().stream()
                .map(HoistHours::over)
                .max(Comparator.naturalOrder())
                .orElse(Instant.EPOCH);
    }

    private static Instant over(Task task) {
        Progress progress = task.progress();
        return progress.ended()
                .map(ended -> ended.plusSeconds(60L * task.unattended()))
                .or(progress::since)
                .orElse(Instant.EPOCH);
    }

    private static long minute(Instant at) {
        return Math.floorDiv(at.getEpochSecond(), 60L);
    }
}
