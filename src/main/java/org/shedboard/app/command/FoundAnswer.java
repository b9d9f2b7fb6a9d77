package org.shedboard.app.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.board.Found;
import org.shedboard.board.NumberWords;
import org.shedboard.day.Day;
import org.shedboard.register.Finder;
import org.shedboard.shop.Machine;
import org.shedboard.words.Words;

/** Machines and owners that were found. */
final class FoundAnswer {
    private FoundAnswer() {}

    static Answer of(Day day, String text) {
        List<Finder.Hit> hits = Found.by(Found.finder(day), day, text);
        if (hits.isEmpty()) {
            return new Answer(List.of(Words.say("register.nothing")), tree(hits));
        }
        Table table = new Table("lllrl");
        hits.forEach(hit -> table.row(
                hit.machine().map(Machine::id).orElse(hit.owner().id()),
                hit.owner().name(),
                hit.machine().map(Machine::label).orElse(Words.say("register.no_machine")),
                hit.machine().map(FoundAnswer::year).orElse(""),
                hit.machine()
                        .map(machine -> NumberWords.marked(machine.number()))
                        .orElse(hit.owner().phone())));
        return new Answer(table.lines(), tree(hits));
    }

    private static String year(Machine machine) {
        return machine.modelYear().isPresent()
                ? String.valueOf(machine.modelYear().getAsInt())
                : "";
    }

    private static Map<String, Object> tree(List<Finder.Hit> hits) {
        return new Tree()
                .put("found", hits.stream().map(FoundAnswer::tree).toList())
                .fields();
    }

    private static Object tree(Finder.Hit hit) {
        Optional<Machine> machine = hit.machine();
        return new Tree()
                .put("grade", hit.grade())
                .put("owner", hit.owner().id())
                .put("name", hit.owner().name())
                .put("machine", machine.map(Machine::id))
                .put("label", machine.map(Machine::label))
                .put("number", machine.map(Machine::number))
                .fields();
    }
}
