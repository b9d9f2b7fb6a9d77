package org.shedboard.forecast;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Estimator;
import org.shedboard.files.Seed;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.Tally;
import org.shedboard.hours.TimeBook;
import org.shedboard.learn.Lesson;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.Window;

/** The seed's shop with a few visits of one's own making, all clocked on one day each. */
final class SmallShop {
    static final Catalogue CATALOGUE = Seed.catalogue();
    static final Shop SHOP = Seed.shop(CATALOGUE).shop();
    static final LocalDate DATE = LocalDate.of(2026, 5, 12);
    private static final Machine QUAD =
            new Machine("M", "O", "quad", "Hauler", OptionalInt.of(2018), "", 300, OptionalInt.empty());

    private final List<Visit> visits = new ArrayList<>();
    private final List<ClockEntry> entries = new ArrayList<>();

    static Machine machine(String classId) {
        return new Machine("M", "O", classId, "Hauler", OptionalInt.of(2018), "", 300, OptionalInt.empty());
    }

    static Instant at(LocalDate date, String time) {
        return date.atTime(java.time.LocalTime.parse(time)).atZone(SHOP.zone()).toInstant();
    }

    static Visit visit(String id, Mud mud, Depth depth, String... workIds) {
        return visit(id, QUAD, mud, depth, workIds);
    }

    static Visit visit(String id, Machine machine, Mud mud, Depth depth, String... workIds) {
        List<Line> lines = new ArrayList<>();
        for (String workId : workIds) {
            lines.add(new Line("L" + lines.size(), workId, workId, Payer.OWNER, List.of()));
        }
        Intake intake = new Intake(at(DATE, "07:00"), mud, depth, Condition.SOUND, "");
        List<Stay> stays = new Estimator(CATALOGUE)
                .estimate(machine.classId(), intake, lines)
                .stays();
        return new Visit(
                id,
                machine.id(),
                OptionalInt.empty(),
                VisitState.IN_YARD,
                intake,
                lines,
                stays,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    SmallShop finished(Visit visit) {
        visits.add(visit.finishedAt(at(DATE, "16:00")));
        return this;
    }

    /** Two who work beside each other may be clocked at the same time. */
    SmallShop clocked(String person, Visit visit, Step step, Optional<String> task, String from, String to) {
        entries.add(new ClockEntry(
                "C" + entries.size(),
                person,
                new Activity.OnStay(visit.id(), step, task),
                at(DATE, from),
                Optional.of(at(DATE, to))));
        return this;
    }

    SmallShop with(ClockEntry entry) {
        entries.add(entry);
        return this;
    }

    List<ClockEntry> entries() {
        return entries;
    }

    List<Lesson> lessons() {
        return lessons(CATALOGUE, QUAD);
    }

    List<Lesson> lessons(Catalogue catalogue, Machine machine) {
        Map<String, List<Window>> breaks = new LinkedHashMap<>();
        SHOP.people().forEach(person -> breaks.put(person.id(), List.of()));
        Tally tally = new TimeBook(SHOP.zone(), HoursRules.USUAL, breaks, entries)
                .tally(DATE, DATE.plusDays(1), at(DATE, "18:00"));
        return Lessons.of(catalogue, SHOP, List.of(machine), visits, tally);
    }
}
