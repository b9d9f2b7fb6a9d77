package org.shedboard.app;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.shedboard.app.command.CheckUp.Looked;
import org.shedboard.app.command.CheckUp.Part;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.hours.ClockCheck;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.shop.Opening;
import org.shedboard.store.Audit;
import org.shedboard.store.Reader;
import org.shedboard.store.StoreFailure;
import org.shedboard.words.Words;

/** Looks at the records of a shop that could be opened. */
final class RecordsDoctor {
    /** So many faults of one sort are named; of the rest there is the number. */
    private static final int MOST_NAMED = 5;

    private final Workshop workshop;
    private final Path place;

    RecordsDoctor(Workshop workshop, Path place) {
        this.workshop = workshop;
        this.place = place;
    }

    List<Looked> look() {
        List<Looked> parts = new ArrayList<>();
        parts.add(new BackupsDoctor(place)
                .look(workshop.read(Reader::firstChange), workshop.read(ShopClock::isDemonstration)));
        parts.add(read(Part.DATABASE, this::database));
        parts.add(read(Part.TIME, this::time));
        parts.add(read(Part.JOURNAL, this::journal));
        parts.add(read(Part.CLOCK, this::clock));
        parts.add(read(Part.PLAN, this::plan));
        return parts;
    }

    /** A row that cannot be read is a fault of the part that it is in. */
    private static Looked read(Part part, Supplier<Looked> look) {
        try {
            return look.get();
        } catch (StoreFailure failure) {
            return Looked.wrong(part, failure.getMessage(), Words.say("doctor.database.todo.damaged"));
        }
    }

    private Looked database() {
        return Looked.sound(
                Part.DATABASE,
                workshop.isOwner() ? "doctor.database" : "doctor.database.shared",
                workshop.read(RecordsDoctor::countVisits),
                place);
    }

    /** How many there ever were; every one of them is read. */
    private static int countVisits(Reader reader) {
        return reader.visitsOpenOrEndedSince(Instant.EPOCH).size();
    }

    private Looked time() {
        List<String> warnings = workshop.safekeeping().warningsOfClock();
        return warnings.isEmpty()
                ? Looked.sound(Part.TIME, "doctor.time")
                : Looked.wrong(Part.TIME, String.join(" ", warnings), "");
    }

    private Looked journal() {
        Audit audit = workshop.read(Reader::audit);
        return audit.faults().isEmpty()
                ? Looked.sound(Part.JOURNAL, "doctor.journal", audit.changes(), audit.rows())
                : Looked.wrong(
                        Part.JOURNAL,
                        Words.say(
                                "doctor.journal.wrong",
                                audit.faults().size(),
                                named(audit.faults().stream()
                                        .map(fault -> Words.say("auditKind." + fault.kind()) + " " + fault.row())
                                        .toList())),
                        Words.say("doctor.journal.todo"));
    }

    private static String named(List<String> faults) {
        return faults.stream().limit(MOST_NAMED).collect(Collectors.joining("; "));
    }

    private Looked clock() {
        List<ClockCheck.Fault> faults = workshop.read(this::checkClock);
        return faults.isEmpty()
                ? Looked.sound(Part.CLOCK, "doctor.clock")
                : Looked.wrong(
                        Part.CLOCK,
                        Words.say(
                                "doctor.clock.wrong",
                                faults.size(),
                                named(faults.stream()
                                        .map(fault -> Words.say("clockFault." + fault.kind()) + " " + fault.entryId())
                                        .toList())),
                        Words.say("doctor.clock.todo"));
    }

    /** What cannot be of all clock entries there ever were. */
    private List<ClockCheck.Fault> checkClock(Reader reader) {
        ZoneId zone = workshop.zone();
        LocalDate from = LocalDate.EPOCH;
        LocalDate until = LocalDate.ofInstant(workshop.now(), zone).plusYears(1);
        Set<LocalDate> closed = reader.openings(from, until).stream()
                .filter(opening -> opening.closed().isPresent())
                .map(Opening::date)
                .collect(Collectors.toSet());
        return ClockCheck.of(
                reader.entries(
                        from.atStartOfDay(zone).toInstant(),
                        until.atStartOfDay(zone).toInstant()),
                closed,
                zone);
    }

    /** What is posted, moved along to now, as everybody works to it. */
    private Looked plan() {
        Day day = workshop.day();
        Instant now = workshop.now();
        if (day.posted().isEmpty()) {
            return Looked.sound(Part.PLAN, "doctor.plan.none");
        }
        Outlook outlook = Outlook.of(day, now);
        PlanCheck check = PlanCheck.of(outlook.problem(), outlook.plan());
        return check.isLegal()
                ? Looked.sound(Part.PLAN, "doctor.plan", outlook.plan().tasks().size())
                : Looked.wrong(
                        Part.PLAN,
                        Words.say("doctor.plan.wrong", check.breaches().size()),
                        Words.say("doctor.plan.todo"));
    }
}
