package org.shedboard.screen;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.RingWords;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Figures;
import org.shedboard.grid.Style;
import org.shedboard.register.Meter;
import org.shedboard.register.NextDue;
import org.shedboard.register.Reading;
import org.shedboard.register.Upkeep;
import org.shedboard.register.UsePerDay;
import org.shedboard.shop.Machine;
import org.shedboard.words.Words;

/** What the page of a machine says of its meters, and of the service that comes next. */
final class UpkeepSections {
    private final Day day;
    private final Machine machine;
    private final Instant now;
    private final Upkeep upkeep;

    UpkeepSections(Day day, Machine machine, Instant now) {
        this.day = day;
        this.machine = machine;
        this.now = now;
        this.upkeep = day.books().upkeep();
    }

    /** The newest reading in each unit and what is run in a day; of a machine known from before readings were kept, the hours alone. */
    Section meter() {
        Section section = Section.of(Words.say("machine.meter"));
        List<Meter> meters = upkeep.metersOf(machine.id());
        for (Meter meter : meters) {
            section = section.plus(about(meter));
        }
        if (!meters.isEmpty()) {
            return section;
        }
        return machine.meterHours().isPresent()
                ? section.plus(Words.say("machine.hours", machine.meterHours().getAsInt()))
                : section.plus(Words.say("machine.no_reading"), Style.QUIET);
    }

    private String about(Meter meter) {
        Reading last = meter.last();
        return Words.say("machine.reading_on", last.shown(), date(last), use(meter));
    }

    private String use(Meter meter) {
        Reading.Unit unit = meter.last().unit();
        Optional<UsePerDay> own = meter.use();
        return own.or(() -> upkeep.usualOf(machine.classId(), unit))
                .map(use -> Words.say(
                        own.isPresent() ? "machine.use" : "machine.use_of_class",
                        Figures.say(use.likely()),
                        unit.symbol(),
                        Figures.say(use.low()),
                        Figures.say(use.high())))
                .orElse(Words.say("machine.use_unknown"));
    }

    /** The work and by what, then when and how long to go. */
    Section nextDue() {
        Section section = Section.of(Words.say("machine.next_due"));
        Optional<NextDue> due = upkeep.nextDue(machine, now);
        if (due.isEmpty()) {
            return section.plus(Words.say("machine.nothing_due"), Style.QUIET);
        }
        LocalDate today = LocalDate.ofInstant(now, day.zone());
        NextDue.State state = due.get().on(today);
        return section.plus(what(due.get()), state == NextDue.State.OVERDUE ? Style.LATE : Style.STRONG)
                .plus(when(due.get(), today));
    }

    private String what(NextDue due) {
        String work = day.books().catalogue().expectWork(due.workId()).name();
        String left = due.dial().map(UpkeepSections::left).orElse("");
        return Words.say("machine.due", work, RingWords.by(due), left).strip();
    }

    private static String left(NextDue.Dial dial) {
        return Words.say(dial.left() < 0 ? "machine.dial_over" : "machine.dial_left", dial.sayLeft());
    }

    private static String when(NextDue due, LocalDate today) {
        NextDue.Dates dates = due.dates();
        String likely = Clocks.sayFullDate(dates.likely());
        String late = RingWords.late(due, today);
        return dates.isSharp()
                ? Words.say("machine.due_on", likely, late)
                : Words.say(
                        "machine.due_between",
                        likely,
                        Clocks.sayFullDate(dates.early()),
                        Clocks.sayFullDate(dates.late()),
                        late);
    }

    /** The readings that stand, the newest first; those that were found to be wrong are not told. */
    Section readings() {
        Section section = Section.of(Words.say("machine.readings"));
        for (Meter meter : upkeep.metersOf(machine.id())) {
            for (Reading reading : meter.newestFirst()) {
                section = meter.isOfNewMeter(reading)
                        ? section.plus(Words.say("machine.new_meter", said(reading)), Style.STRONG)
                        : section.plus(said(reading));
            }
        }
        return section;
    }

    private String said(Reading reading) {
        return Words.say("machine.read", date(reading), reading.shown(), day.nameOf(reading.by()));
    }

    private String date(Reading reading) {
        return Clocks.sayFullDate(LocalDate.ofInstant(reading.at(), day.zone()));
    }
}
