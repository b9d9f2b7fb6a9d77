package org.shedboard.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Named texts and the next number for ids, in the tables setting and serial. */
final class SettingRows {
    private static final Table SETTING =
            Table.named("setting").text("name", "text").keyed("name").scoped("name");
    private static final Table SERIAL =
            Table.named("serial").number("id").wide("next_number").keyed("id");

    private SettingRows() {}

    static Optional<String> find(Sql sql, String name) {
        return sql.select(SETTING, "WHERE name = ?", name).stream().findFirst().map(row -> row.text("text"));
    }

    /** All named texts. */
    static Map<String, String> all(Sql sql) {
        return sql.select(SETTING, "").stream()
                .collect(Collectors.toMap(row -> row.text("name"), row -> row.text("text")));
    }

    static Share share(String name, String text) {
        return share(Map.of(name, text));
    }

    static Share share(Map<String, String> texts) {
        List<Cells> rows = texts.entrySet().stream()
                .map(each -> Cells.in(SETTING).set("name", each.getKey()).set("text", each.getValue()))
                .toList();
        return Share.of(SETTING, List.copyOf(texts.keySet()), rows);
    }

    static long nextNumber(Sql sql) {
        return sql.select(SERIAL, "").stream()
                .findFirst()
                .map(row -> row.wide("next_number"))
                .orElse(1L);
    }

    static Share shareOfNextNumber(long next) {
        return Share.whole(SERIAL, List.of(Cells.in(SERIAL).set("id", 1).set("next_number", next)));
    }
}
