package org.shedboard.app.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.board.RingWords;
import org.shedboard.day.Day;
import org.shedboard.day.RingList;
import org.shedboard.files.Fields;
import org.shedboard.register.NextDue;
import org.shedboard.register.WorkLoad;
import org.shedboard.words.Words;

/** Whom to ring, a line a machine, and how many hours of work that would bring. */
final class RingAnswer {
    private final Day day;
    private final RingList list;
    private final int weeks;

    private RingAnswer(Day day, RingList list, int weeks) {
        this.day = day;
        this.list = list;
        this.weeks = weeks;
    }

    static Answer of(Day day, RingList list, int weeks) {
        RingAnswer answer = new RingAnswer(day, list, weeks);
        return new Answer(answer.lines(), answer.tree());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>(List.of(RingWords.title(weeks)));
        if (!list.calls().isEmpty()) {
            lines.addAll(table().lines());
        }
        lines.add(RingWords.total(list));
        return lines;
    }

    private Table table() {
        Table table = new Table("lllllllrrl");
        table.row(
                Words.say("ring.id"),
                Words.say("ring.owner"),
                Words.say("ring.phone"),
                Words.say("ring.machine"),
                Words.say("ring.due"),
                Words.say("ring.by"),
                Words.say("ring.when"),
                Words.say("ring.late"),
                Words.say("ring.work_minutes"),
                "");
        list.calls().forEach(call -> row(table, call));
        return table;
    }

    private void row(Table table, RingList.Call call) {
        table.row(
                call.machine().id(),
                call.owner().name(),
                call.owner().phone(),
                call.machine().label(),
                call.work().name(),
                RingWords.by(call.due()),
                RingWords.range(call.due().dates()),
                RingWords.late(call.due(), list.today()),
                String.valueOf(call.load().minutes()),
                RingWords.rung(day.books(), call).orElse(""));
    }

    private Map<String, Object> tree() {
        return new Tree()
                .put("date", list.today().toString())
                .put("weeks", weeks)
                .put("machines", list.calls().stream().map(this::tree).toList())
                .put("load", tree(list.load()))
                .fields();
    }

    private Map<String, Object> tree(RingList.Call call) {
        NextDue due = call.due();
        Tree tree = new Tree()
                .put("machine", call.machine().id())
                .put("label", call.machine().label())
                .put("class", call.machine().classId())
                .put("owner", call.owner().name())
                .put("phone", call.owner().phone());
        return DueFields.onto(tree, day, due, list.today())
                .put("load", tree(call.load()))
                .put(
                        "rung",
                        call.rung()
                                .map(rung -> new Tree()
                                        .put("at", Tree.time(day, rung.at()))
                                        .put("by", rung.by())
                                        .put("said", rung.said())
                                        .put("again", rung.again().map(LocalDate::toString))
                                        .put("note", rung.note())
                                        .fields()))
                .fields();
    }

    private static Map<String, Object> tree(WorkLoad load) {
        Map<String, Integer> people = new LinkedHashMap<>();
        load.handsOn().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> people.put(Fields.nameOf(entry.getKey()), entry.getValue()));
        Map<String, Integer> places = new LinkedHashMap<>();
        load.inPlaces().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> places.put(Fields.nameOf(entry.getKey()), entry.getValue()));
        return new Tree()
                .put("minutes", load.minutes())
                .put("bySkill", people)
                .put("byPlaceKind", places)
                .fields();
    }
}
