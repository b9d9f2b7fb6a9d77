package org.shedboard.screen;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.board.NumberWords;
import org.shedboard.day.Day;
import org.shedboard.estimate.Point;
import org.shedboard.grid.Style;
import org.shedboard.register.History;
import org.shedboard.register.IdNumber;
import org.shedboard.register.Merged;
import org.shedboard.register.NumberRemark;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Owner;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** What the page of a machine says, part by part: on the screen and by the command alike. */
public final class MachineSections {
    private final Day day;
    private final Machine machine;
    private final Optional<History> history;

    private MachineSections(Day day, Machine machine, Optional<History> history) {
        this.day = day;
        this.machine = machine;
        this.history = history;
    }

    /** @param history empty while it is being read */
    public static List<Section> of(Day day, Instant now, Machine machine, Optional<History> history) {
        MachineSections page = new MachineSections(day, machine, history);
        UpkeepSections upkeep = new UpkeepSections(day, machine, now);
        StandingSections standing = new StandingSections(day, machine, history);
        List<Section> all = new ArrayList<>();
        all.add(page.owner());
        all.add(page.machine());
        all.add(page.number());
        all.add(upkeep.meter());
        all.add(upkeep.nextDue());
        all.add(standing.tookHome());
        all.add(standing.notices());
        all.add(standing.lent());
        all.add(page.merged());
        all.add(page.tags());
        all.add(page.visits());
        all.add(upkeep.readings());
        return all.stream().filter(section -> !section.isEmpty()).toList();
    }

    private Section owner() {
        Owner owner = day.books().expectOwner(machine.ownerId());
        String name = owner.isForgotten() ? Words.say("machine.forgotten", owner.name()) : owner.name();
        Section section = Section.of(Words.say("machine.owner")).plus(parts(name, owner.phone()), Style.STRONG);
        return owner.washDownFirst() ? section.plus(Words.say("machine.wash_down_first"), Style.STRONG) : section;
    }

    private Section machine() {
        String year = machine.modelYear().isPresent()
                ? String.valueOf(machine.modelYear().getAsInt())
                : Words.say("machine.year_unknown");
        String className =
                day.books().catalogue().expectClass(machine.classId()).name();
        return Section.of(Words.say("machine.machine"))
                .plus(parts(machine.label(), className, year, Words.say("machine.mass", machine.massKg())));
    }

    /** What is wrong comes first, in the colour of things that are. */
    private Section number() {
        IdNumber number = IdNumber.of(machine.number());
        if (machine.number().isBlank()) {
            return Section.of(Words.say("machine.number")).plus(Words.say("machine.no_number"), Style.QUIET);
        }
        Section section = Section.of(Words.say("machine.number"))
                .plus(parts(machine.number(), NumberWords.about(number)), number.fails() ? Style.LATE : Style.NORMAL);
        for (NumberRemark fault : number.faults()) {
            section = section.plus(NumberWords.of(fault), fault.kind().fails() ? Style.LATE : Style.QUIET);
        }
        return years(section, number.years(day.date().getYear()));
    }

    /** What years the number allows is of interest only while it is not known which it is, or where it is none of them. */
    private Section years(Section section, List<Integer> years) {
        if (years.isEmpty()) {
            return section;
        }
        String possible = NumberWords.years(years);
        if (machine.modelYear().isEmpty()) {
            return section.plus(Words.say("machine.years", possible), Style.QUIET);
        }
        int year = machine.modelYear().getAsInt();
        return years.contains(year)
                ? section
                : section.plus(Words.say("machine.other_years", possible, year), Style.LATE);
    }

    private Section merged() {
        Section section = Section.of(Words.say("machine.merged"));
        for (Merged merged : day.books().register().mergedInto(machine.id())) {
            section =
                    section.plus(Words.say("machine.was", date(merged.at()), recordOf(merged.machine())), Style.QUIET);
        }
        return section;
    }

    private String recordOf(Machine other) {
        String owner = day.books().expectOwner(other.ownerId()).name();
        String year =
                other.modelYear().isPresent() ? String.valueOf(other.modelYear().getAsInt()) : "";
        String meter = other.meterHours().isPresent()
                ? Words.say("machine.hours", other.meterHours().getAsInt())
                : "";
        return parts(owner, other.label(), year, other.number(), Words.say("machine.mass", other.massKg()), meter);
    }

    private Section tags() {
        String tags = history.stream()
                .flatMap(each -> each.visited().stream())
                .flatMapToInt(visited -> visited.tag().stream())
                .distinct()
                .mapToObj(String::valueOf)
                .collect(Collectors.joining(", "));
        Section section = Section.of(Words.say("machine.tags"));
        return tags.isEmpty() ? section : section.plus(tags);
    }

    private Section visits() {
        Section section = Section.of(Words.say("machine.visits"));
        if (history.isEmpty()) {
            return section.plus(Words.say("machine.reading"), Style.QUIET);
        }
        if (history.get().visited().isEmpty()) {
            return section.plus(Words.say("machine.no_visits"), Style.QUIET);
        }
        for (History.Visited visited : history.get().visited()) {
            section = section.plus(about(visited));
            for (Finding finding : visited.visit().findings()) {
                if (finding.mark() != Mark.GOOD) {
                    section = section.plus("  " + said(finding), styleOf(finding.mark()));
                }
            }
        }
        return section;
    }

    private String about(History.Visited visited) {
        String lines = visited.visit().lines().stream().map(Line::name).collect(Collectors.joining(" + "));
        String tag = visited.tag().isPresent()
                ? Words.say("machine.tag", visited.tag().getAsInt())
                : "";
        return parts(
                date(visited.visit().intake().arrives()),
                Words.say(visited.visit().state()),
                tag,
                lines,
                visited.visit().intake().note());
    }

    private String said(Finding finding) {
        Optional<Point> point =
                day.books().catalogue().expectClass(machine.classId()).findPoint(finding.pointId());
        String name = point.map(Point::name).orElse(finding.pointId());
        String unit = point.flatMap(Point::measure).map(Point.Measure::unit).orElse("");
        String measured = finding.measured().isPresent()
                ? Words.say("machine.measured", finding.measured().getAsDouble(), unit)
                        .strip()
                : "";
        return Words.say("machine.finding", Words.say(finding.mark()), parts(name, measured, finding.note()));
    }

    private static Style styleOf(Mark mark) {
        return mark == Mark.FIX ? Style.DANGER : Style.QUIET;
    }

    private String date(Instant at) {
        return When.FULL_DATE.say(at.atZone(day.zone()));
    }

    /** What there is of these, side by side. */
    private static String parts(String... texts) {
        return List.of(texts).stream().filter(text -> !text.isBlank()).collect(Collectors.joining("   "));
    }
}
