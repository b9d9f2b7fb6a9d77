package org.shedboard.app.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Day;
import org.shedboard.files.Fields;
import org.shedboard.grid.TextWidth;
import org.shedboard.register.History;
import org.shedboard.register.IdNumber;
import org.shedboard.register.Merged;
import org.shedboard.screen.MachineSections;
import org.shedboard.screen.Section;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Visit;

/** What the register says of one machine, and what it went through. */
final class MachineAnswer {
    /** Columns of the titles. */
    private static final int TITLE = 11;

    private final Day day;
    private final Instant now;
    private final Machine machine;
    private final History history;

    private MachineAnswer(Day day, Instant now, Machine machine, History history) {
        this.day = day;
        this.now = now;
        this.machine = machine;
        this.history = history;
    }

    static Answer of(Day day, Instant now, Machine machine, History history) {
        MachineAnswer answer = new MachineAnswer(day, now, machine, history);
        return new Answer(answer.lines(), answer.tree());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (Section section : MachineSections.of(day, now, machine, Optional.of(history))) {
            String title = section.title();
            for (Section.Entry entry : section.entries()) {
                lines.add((title + " ".repeat(Math.max(1, TITLE - TextWidth.of(title))) + entry.text())
                        .stripTrailing());
                title = "";
            }
        }
        return lines;
    }

    private Map<String, Object> tree() {
        Owner owner = day.books().expectOwner(machine.ownerId());
        Tree tree = new Tree()
                .put("id", machine.id())
                .put("owner", owner.id())
                .put("name", owner.name())
                .put("phone", owner.phone())
                .put("washDownFirst", owner.washDownFirst())
                .put("class", machine.classId())
                .put("label", machine.label())
                .put("year", machine.modelYear())
                .put("massKg", machine.massKg())
                .put("meterHours", machine.meterHours())
                .put(
                        "number",
                        NumberCommand.tree(
                                        IdNumber.of(machine.number()),
                                        day.date().getYear())
                                .fields())
                .put(
                        "merged",
                        day.books().register().mergedInto(machine.id()).stream()
                                .map(this::tree)
                                .toList());
        return new MachineFields(day, now, machine, history)
                .onto(tree)
                .put("visits", history.visited().stream().map(this::tree).toList())
                .fields();
    }

    private Object tree(Merged merged) {
        Machine other = merged.machine();
        return new Tree()
                .put("id", other.id())
                .put("at", Tree.time(day, merged.at()))
                .put("owner", other.ownerId())
                .put("label", other.label())
                .put("year", other.modelYear())
                .put("massKg", other.massKg())
                .put("meterHours", other.meterHours())
                .put("number", other.number())
                .fields();
    }

    private Object tree(History.Visited visited) {
        Visit visit = visited.visit();
        return new Tree()
                .put("id", visit.id())
                .put("arrived", Tree.time(day, visit.intake().arrives()))
                .put("state", visit.state())
                .put("tag", visited.tag())
                .put("lines", visit.lines().stream().map(Line::name).toList())
                .put("note", visit.intake().note())
                .put(
                        "notGood",
                        visit.findings().stream()
                                .filter(finding -> finding.mark() != Mark.GOOD)
                                .map(finding -> of(finding).fields())
                                .toList())
                .fields();
    }

    /** What was found at a point, and what was read off there. */
    static Tree of(Finding finding) {
        return new Tree()
                .put("point", finding.pointId())
                .put("mark", Fields.nameOf(finding.mark()))
                .put(
                        "measured",
                        finding.measured().isPresent() ? finding.measured().getAsDouble() : null)
                .put("note", finding.note());
    }
}
