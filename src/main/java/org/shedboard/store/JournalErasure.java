package org.shedboard.store;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.shedboard.register.Erasure;
import org.shedboard.shop.Owner;

/** Takes an owner out of the journal's lines, as {@link Cells#toLine} wrote them: a table and key, then columns with their contents. */
final class JournalErasure {
    private final Erasure erasure;
    private final Owner forgotten;
    private final Set<String> visitIds;
    private final Set<String> machineIds;

    /**
     * @param visitIds the visits of this owner's machines
     * @param machineIds those machines
     */
    JournalErasure(Erasure erasure, Owner forgotten, Set<String> visitIds, Set<String> machineIds) {
        this.erasure = erasure;
        this.forgotten = forgotten;
        this.visitIds = visitIds;
        this.machineIds = machineIds;
    }

    /** The whole lines about one thing. */
    static Pattern linesOf(String table, String id) {
        return Pattern.compile("(?m)^%s %s(?=[; ]|$).*$".formatted(table, Pattern.quote(id)));
    }

    /** What a line tells of a column. */
    static Optional<String> column(String line, String column) {
        Matcher content = contentOf(column).matcher(line);
        return content.find() ? Optional.of(content.group(1)) : Optional.empty();
    }

    /** Up to the next column, or to the end of the line. */
    private static Pattern contentOf(String column) {
        return Pattern.compile("(?<=; %s )(.*?)(?=; [a-z_]+ |$)".formatted(column));
    }

    String of(String text) {
        return text.isEmpty() ? text : text.lines().map(this::line).collect(Collectors.joining("\n"));
    }

    private String line(String line) {
        int columns = line.indexOf("; ");
        if (columns < 0) {
            return line;
        }
        String[] head = line.substring(0, columns).split(" ");
        String told = line;
        if (head.length > 1 && head[0].equals("owner") && head[1].equals(forgotten.id())) {
            told = without(without(told, "name"), "phone");
        } else if (head.length > 1) {
            told = withoutListener(head[0], head[1], told);
        }
        return told.substring(0, columns) + erasure.of(told.substring(columns));
    }

    /** Who was told, or asked, or took a machine of this owner: whoever it was, it is how the owner was reached. */
    private String withoutListener(String table, String id, String line) {
        return switch (table) {
            case "promise" -> visitIds.contains(id) ? without(line, "said_to") : line;
            case "finding" -> visitIds.contains(id) ? without(line, "asked_of") : line;
            case "visit" -> visitIds.contains(id) ? without(line, "handed_to") : line;
            case "carried" -> machineIds.contains(id) ? without(line, "asked_of") : line;
            default -> line;
        };
    }

    private String without(String line, String column) {
        return contentOf(column).matcher(line).replaceAll(Matcher.quoteReplacement(forgotten.id()));
    }
}
