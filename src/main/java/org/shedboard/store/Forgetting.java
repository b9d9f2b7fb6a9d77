package org.shedboard.store;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shedboard.register.Erasure;
import org.shedboard.shop.Owner;

/**
 * An owner being forgotten: what they are called, and were called before, is taken out of every text in the records, the journal's
 * included. The only change that alters journal rows, and one that the journal does not tell.
 */
final class Forgetting {
    private static final Table OWNER =
            Table.named("owner").text("id", "name", "phone").keyed("id");
    private static final Table PROMISE = Table.named("promise")
            .text("visit_id")
            .number("ordinal")
            .text("said_to", "why")
            .keyed("visit_id", "ordinal");

    /** Makers and models; in those of other owners' machines a word of the name is none. */
    private static final Table LABEL =
            Table.named("machine").text("id", "label").keyed("id");

    /** Every other table with texts that people typed, its key and those texts; a new one belongs here. */
    private static final List<Table> TYPED = List.of(
            Table.named("visit")
                    .text("id", "note", "hold_note", "handed_to", "handed_told")
                    .keyed("id"),
            PROMISE,
            Table.named("finding")
                    .text("visit_id", "point_id", "note", "asked_of")
                    .keyed("visit_id", "point_id"),
            Table.named("carried")
                    .text("machine_id", "point_id", "note", "asked_of")
                    .keyed("machine_id", "point_id"),
            Table.named("errand").text("id", "note").keyed("id"),
            Table.named("loan").text("id", "label").keyed("id"),
            Table.named("rung").text("id", "note").keyed("id"),
            Table.named("clock_entry").text("id", "why").keyed("id"),
            Table.named("hoist_check")
                    .date("opened_on")
                    .number("ordinal")
                    .text("locked_out")
                    .keyed("opened_on", "ordinal"));

    private static final Table JOURNAL =
            Table.named("journal").wide("id").text("before_text", "after_text").keyed("id");
    /** So many journal rows are held at a time. */
    private static final int PAGE = 1000;

    private static final String OF_OWNER =
            "WHERE visit_id IN (SELECT v.id FROM visit v JOIN machine m ON m.id = v.machine_id WHERE m.owner_id = ?)";

    private static final Table ASKED =
            Table.named("finding").text("visit_id", "point_id", "asked_of").keyed("visit_id", "point_id");
    private static final Table CARRIED =
            Table.named("carried").text("machine_id", "point_id", "asked_of").keyed("machine_id", "point_id");

    private static final String OWN_MACHINES = "machine_id IN (SELECT id FROM machine WHERE owner_id = ?)";
    private static final String HANDED_BY_OWNER = "WHERE handed_to IS NOT NULL AND " + OWN_MACHINES;
    private static final String ASKED_OF_OWNER = "WHERE asked_of IS NOT NULL AND " + OWN_MACHINES;

    private final Sql sql;
    private final Owner forgotten;
    private final Set<String> names = new LinkedHashSet<>();
    private final Set<String> phones = new LinkedHashSet<>();

    Forgetting(Sql sql, Owner forgotten) {
        this.sql = sql;
        this.forgotten = forgotten;
    }

    void run() {
        sql.select(OWNER, "WHERE id = ?", forgotten.id()).forEach(row -> isCalled(row.text("name"), row.text("phone")));
        throughJournal(this::learn);
        Erasure erasure = Erasure.of(names, phones, others(), forgotten.id());
        sql.change(
                OWNER,
                List.of(Cells.in(OWNER)
                        .set("id", forgotten.id())
                        .set("name", forgotten.name())
                        .set("phone", forgotten.phone())));
        forgetWhoWasTold();
        forgetWhoWasAsked();
        update(LABEL, sql.select(LABEL, "WHERE owner_id = ?", forgotten.id()), erasure);
        TYPED.forEach(table -> update(table, sql.select(table, ""), erasure));
        JournalErasure lines = new JournalErasure(
                erasure,
                forgotten,
                ids(Table.named("visit").text("id").keyed("id"), "WHERE " + OWN_MACHINES),
                ids(Table.named("machine").text("id").keyed("id"), "WHERE owner_id = ?"));
        throughJournal(rows -> rows.forEach(row -> rewrite(row, lines)));
    }

    private List<String> others() {
        return sql.select(OWNER, "WHERE id <> ?", forgotten.id()).stream()
                .map(row -> row.text("name"))
                .toList();
    }

    private void isCalled(String name, String phone) {
        names.add(name);
        phones.add(phone);
    }

    /** What an owner was called before stands only in the journal. */
    private void learn(List<Cells> rows) {
        Pattern told = JournalErasure.linesOf("owner", forgotten.id());
        for (Cells row : rows) {
            Matcher line = told.matcher(row.text("before_text") + "\n" + row.text("after_text"));
            while (line.find()) {
                JournalErasure.column(line.group(), "name").ifPresent(names::add);
                JournalErasure.column(line.group(), "phone").ifPresent(phones::add);
            }
        }
    }

    /** Whoever it was: it is how this owner was reached. */
    private void forgetWhoWasTold() {
        List<Cells> told = sql.select(PROMISE, OF_OWNER, forgotten.id());
        sql.change(
                PROMISE,
                told.stream().map(row -> row.with("said_to", forgotten.id())).toList());
    }

    private Set<String> ids(Table table, String where) {
        Set<String> ids = new LinkedHashSet<>();
        sql.select(table, where, forgotten.id()).forEach(row -> ids.add(row.text("id")));
        return ids;
    }

    /** Whoever was asked about a fix, or took the machine: the same as with promises. */
    private void forgetWhoWasAsked() {
        blank(Table.named("visit").text("id", "handed_to").keyed("id"), "handed_to", HANDED_BY_OWNER);
        blank(ASKED, "asked_of", "%s AND asked_of IS NOT NULL".formatted(OF_OWNER));
        blank(CARRIED, "asked_of", ASKED_OF_OWNER);
    }

    private void blank(Table table, String column, String where) {
        List<Cells> rows = sql.select(table, where, forgotten.id());
        sql.change(
                table,
                rows.stream().map(row -> row.with(column, forgotten.id())).toList());
    }

    private void update(Table table, List<Cells> rows, Erasure erasure) {
        List<Cells> changed = new ArrayList<>();
        for (Cells row : rows) {
            Cells erased = row;
            for (Column column : table.columns()) {
                Optional<String> text = table.key().contains(column.name()) || column.type() != Column.Type.TEXT
                        ? Optional.empty()
                        : row.findText(column.name());
                erased = text.isPresent() ? erased.with(column.name(), erasure.of(text.get())) : erased;
            }
            if (!erased.holdsSameAs(row)) {
                changed.add(erased);
            }
        }
        sql.change(table, changed);
    }

    private void throughJournal(Consumer<List<Cells>> work) {
        long last = 0;
        List<Cells> page;
        do {
            page = sql.select(JOURNAL, "WHERE id > ? ORDER BY id FETCH FIRST %s ROWS ONLY".formatted(PAGE), last);
            work.accept(page);
            last = page.isEmpty() ? last : page.get(page.size() - 1).wide("id");
        } while (page.size() == PAGE);
    }

    private void rewrite(Cells row, JournalErasure lines) {
        Cells erased = row.with("before_text", lines.of(row.text("before_text")))
                .with("after_text", lines.of(row.text("after_text")));
        if (!erased.holdsSameAs(row)) {
            sql.change(JOURNAL, List.of(erased));
        }
    }
}
