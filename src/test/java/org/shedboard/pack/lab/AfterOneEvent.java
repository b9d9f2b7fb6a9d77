package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.ReplanDays;
import org.shedboard.pack.search.Packer;

/** Days packed, posted and gone as planned until something happens; packed again as the board does, and freely. */
final class AfterOneEvent implements Section {
    private static final int DAYS = 6;
    private static final long SEED = 1;

    private final Costs board = BoardCosts.read();

    @Override
    public String name() {
        return "event";
    }

    @Override
    public String what() {
        return "after one event (sick, hoist out, walk-in, late finish)";
    }

    @Override
    public String target() {
        return "within 1 % of repacking freely; no start in the next hour moved unless a promise is gained";
    }

    @Override
    public Reached measure(Laboratory lab, Rows rows) throws InterruptedException {
        List<DayFolder.Day> days = lab.some(lab.days.judged(), DAYS);
        List<EventOutcome> outcomes = new ArrayList<>();
        for (int number = 0; number < days.size(); number++) {
            DayFolder.Day day = days.get(number);
            Plan posted = lab.pack(day.problem(), SEED, Laboratory.secondsFor(day));
            for (ReplanDays.Event event : ReplanDays.Event.values()) {
                Optional<Problem> happened = ReplanDays.find(day.problem(), posted, event, number);
                if (happened.isEmpty()) {
                    rows.add("%-14s %2d machines  %-11s cannot happen", day.name(), day.machines(), word(event));
                } else {
                    outcomes.add(after(lab, rows, day, happened.get(), event));
                }
            }
        }
        return outcomes.isEmpty() ? Reached.nothing("nothing could happen") : reached(outcomes, days.size());
    }

    private static Reached reached(List<EventOutcome> outcomes, int days) {
        EventOutcome worst = outcomes.stream()
                .max(Comparator.comparingDouble(EventOutcome::percentOver))
                .orElseThrow();
        return Reached.of(
                Verdict.of(outcomes.stream().allMatch(EventOutcome::isMet)),
                "%d of %d within 1 %%, worst %s; a start in the next hour moved for no promise in %d;"
                        + " against the plan moved along %d promises gained, %d lost (%d days, the events that can happen, 1 seed each)",
                outcomes.stream().filter(EventOutcome::isNear).count(),
                outcomes.size(),
                Score.percent(worst.percentOver()),
                outcomes.stream().filter(EventOutcome::movesForNothing).count(),
                outcomes.stream().mapToInt(EventOutcome::gained).sum(),
                outcomes.stream().mapToInt(EventOutcome::lost).sum(),
                days);
    }

    private EventOutcome after(Laboratory lab, Rows rows, DayFolder.Day day, Problem happened, ReplanDays.Event event)
            throws InterruptedException {
        double seconds = Laboratory.secondsFor(day);
        Problem priced = happened.withCosts(board);
        Problem plain = happened.withCosts(board.withStability(0, 0));
        Plan offered = lab.pack(priced, SEED, seconds);
        Plan free = lab.pack(plain, SEED, seconds);
        Plan followed = Packer.follow(priced);
        EventOutcome outcome = EventOutcome.of(plain, followed, offered, free);
        rows.add(
                "%-14s %2d machines  %-11s at %3d  %4.1f s  moved along %-11s offered %-11s freely %-11s %s over;"
                        + " moved within the hour %d (of the posted %d), promises +%d -%d %s",
                day.name(),
                day.machines(),
                word(event),
                plain.now(),
                lab.scaled(seconds),
                Score.of(plain, followed),
                Score.of(plain, offered),
                Score.of(plain, free),
                Score.percent(outcome.percentOver()),
                outcome.moved(),
                EventOutcome.moved(plain, happened.posted().orElseThrow(), offered),
                outcome.gained(),
                outcome.lost(),
                outcome.isMet() ? "" : "missed");
        return outcome;
    }

    private static String word(ReplanDays.Event event) {
        return event.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
