package org.shedboard.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;

/**
 * A change that reads before it writes, such that it matters after which others it is made. Several processes make them at once; a map
 * makes them one after another.
 */
record Deed(String id, Kind kind, String from, String to, int by) {
    private static final String NAMES = "abcd";
    private static final int MOST = 9;
    private static final int LONGEST = 60;

    /** What is done with two texts, of which the first is a number where it is to be one. */
    enum Kind {
        ADD,
        /** Takes from the one what the other gets, where there is enough. */
        MOVE,
        /** Says at the end of the other what the one is. */
        APPEND
    }

    static Deed drawn(Random random, String id) {
        return new Deed(id, Kind.values()[random.nextInt(3)], name(random), name(random), 1 + random.nextInt(MOST));
    }

    private static String name(Random random) {
        return String.valueOf(NAMES.charAt(random.nextInt(NAMES.length())));
    }

    /** Whether a line of the journal is one of a deed. */
    static boolean is(String text) {
        return text.matches("\\S+ (ADD|MOVE|APPEND) [a-d] [a-d] \\d");
    }

    static Deed parse(String text) {
        String[] words = text.split(" ");
        return new Deed(words[0], Kind.valueOf(words[1]), words[2], words[3], Integer.parseInt(words[4]));
    }

    String text() {
        return "%s %s %s %s %s".formatted(id, kind, from, to, String.valueOf(by));
    }

    /** Does it in the records, as one change. */
    void in(Store store) {
        store.save(
                Samples.STAMP,
                text(),
                tx -> on(name -> tx.setting(name).orElse("")).forEach(tx::saveSetting));
    }

    /** What changes, by name. */
    Map<String, String> on(Function<String, String> present) {
        Map<String, String> changes = new LinkedHashMap<>();
        int has = number(present.apply(from));
        switch (kind) {
            case ADD -> changes.put(from, String.valueOf(has + by));
            case MOVE -> {
                if (has >= by && !from.equals(to)) {
                    changes.put(from, String.valueOf(has - by));
                    changes.put(to, String.valueOf(number(present.apply(to)) + by));
                }
            }
            case APPEND -> {
                String longer = present.apply("text " + to) + has + ";";
                changes.put("text " + to, longer.substring(Math.max(0, longer.length() - LONGEST)));
            }
            default -> throw new IllegalStateException(text());
        }
        return changes;
    }

    private static int number(String text) {
        return text.isEmpty() ? 0 : Integer.parseInt(text);
    }
}
