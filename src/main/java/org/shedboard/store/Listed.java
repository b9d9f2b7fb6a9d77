package org.shedboard.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** A list of texts as one text: each ends in a line feed; a line feed or backslash within is written with a backslash. */
final class Listed {
    private Listed() {}

    static String join(Collection<?> items) {
        StringBuilder joined = new StringBuilder();
        items.forEach(item -> joined.append(escape(String.valueOf(item))).append('\n'));
        return joined.toString();
    }

    static List<String> split(String joined) {
        List<String> items = new ArrayList<>();
        StringBuilder item = new StringBuilder();
        for (int i = 0; i < joined.length(); i++) {
            char letter = joined.charAt(i);
            if (letter == '\n') {
                items.add(item.toString());
                item.setLength(0);
            } else if (letter == '\\') {
                i++;
                item.append(joined.charAt(i) == 'n' ? '\n' : joined.charAt(i));
            } else {
                item.append(letter);
            }
        }
        return items;
    }

    /** On one line. */
    static String escape(String text) {
        return text.replace("\\", "\\\\").replace("\n", "\\n");
    }
}
