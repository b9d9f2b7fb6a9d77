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

    /** @param visitIds the visits whose promises were made to this owner */
    JournalErasure(Erasure erasure, Owner forgotten, Set<String> visitIds) {
        this.erasure = erasure;
        this.forgotten = forgotten;
        this.visitIds = visitIds;
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
        } else if (head.length > 1 && head[0].equals("promise") && visitIds.contains(head[1])) {
            told = without(told, "said_to");
        }
        return told.substring(0, columns) + erasure.of(told.substring(columns));
    }

    private String without(String line, String column) {
        return contentOf(column).matcher(line).replaceAll(Matcher.quoteReplacement(forgotten.id()));
    }
}
