package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What records of deeds must be like, whoever did these at once and whatever broke meanwhile: as in a map in which they were done one by one. */
final class DeedModel {
    private DeedModel() {}

    /**
     * Fails unless the journal has each deed once at most and each of the acknowledged ones, tells what each changed, and what
     * is there in the end is what a map holds in which the deeds of the journal were done in its order.
     *
     * @param acknowledged ids of deeds
     */
    static void check(Store store, Collection<String> acknowledged) {
        List<JournalRow> journal = store.read(reader -> reader.journal(1)).stream()
                .filter(row -> Deed.is(row.what()))
                .toList();
        assertAcknowledged(journal, acknowledged);
        Map<String, String> model = new HashMap<>();
        for (JournalRow row : journal) {
            Map<String, String> changes = Deed.parse(row.what()).on(name -> model.getOrDefault(name, ""));
            assertTold(row, changes, model);
            model.putAll(changes);
        }
        assertTrue(model.size() > 4, model::toString);
        model.forEach(
                (name, text) -> assertEquals(Optional.of(text), store.read(reader -> reader.setting(name)), name));
    }

    private static void assertAcknowledged(List<JournalRow> journal, Collection<String> acknowledged) {
        List<String> made =
                journal.stream().map(row -> Deed.parse(row.what()).id()).toList();
        Set<String> once = new HashSet<>(made);
        assertEquals(made.size(), once.size(), "a change was made twice");
        Set<String> lost =
                acknowledged.stream().filter(id -> !once.contains(id)).collect(Collectors.toSet());
        assertEquals(Set.of(), lost);
    }

    /** The journal tells what really changed: a line for each text that is another, with what it was. */
    private static void assertTold(JournalRow row, Map<String, String> changes, Map<String, String> model) {
        Set<String> after = new HashSet<>();
        Set<String> before = new HashSet<>();
        changes.forEach((name, text) -> {
            if (!text.equals(model.get(name))) {
                after.add("setting %s; text %s".formatted(name, text));
                if (model.containsKey(name)) {
                    before.add("setting %s; text %s".formatted(name, model.get(name)));
                }
            }
        });
        assertEquals(after, row.after().lines().collect(Collectors.toSet()), row.what());
        assertEquals(before, row.before().lines().collect(Collectors.toSet()), row.what());
    }
}
