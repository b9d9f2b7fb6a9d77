package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The shop taken over into a database. */
@Command(name = "move")
public final class MoveCommand implements Wish {
    @Option(names = "--to", paramLabel = "URL", required = true)
    private String to;

    /** A table that arrived as it was. */
    public record Arrived(String table, long rows, String digest) {
        private Map<String, Object> tree() {
            return new Tree()
                    .put("table", table)
                    .put("rows", rows)
                    .put("digest", digest)
                    .fields();
        }
    }

    public String to() {
        return to;
    }

    public Answer answer(List<Arrived> tables) {
        long rows = tables.stream().mapToLong(Arrived::rows).sum();
        Table table = new Table("lrl");
        tables.forEach(each -> table.row(each.table(), Long.toString(each.rows()), each.digest()));
        List<String> lines = new ArrayList<>(table.lines());
        lines.add(Words.say("command.move.done", rows, tables.size()));
        lines.add(Words.say("command.move.next", to));
        Tree tree = new Tree()
                .put("movedTo", to)
                .put("rows", rows)
                .put("tables", tables.stream().map(Arrived::tree).toList());
        return new Answer(lines, tree.fields());
    }
}
