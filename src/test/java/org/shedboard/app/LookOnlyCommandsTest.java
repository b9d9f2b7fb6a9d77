package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.day.Act;
import org.shedboard.day.Outcome;
import org.shedboard.day.Refusal;
import org.shedboard.day.WhatIf;
import org.shedboard.store.Address;
import org.shedboard.store.Reader;
import org.shedboard.store.Stamp;
import org.shedboard.store.Store;
import org.shedboard.store.StoreFailure;

/** A terminal that only looks changes nothing, whatever it is asked. */
class LookOnlyCommandsTest {
    private static final String NO = "This terminal only looks (--look-only); nothing is changed from it.\n";

    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    private long journal() {
        try (Store store = Store.open(Homes.demonstration(directory))) {
            return store.read(Reader::lastJournal);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "start Marnie",
                "pause Wren",
                "take-in --class quad --owner Somebody --work o --mud 1",
                "close --by Marnie",
                "rules --by Marnie --rest 10",
                "margin 80 --by Marnie",
                "merge M10 M12 --by Marnie",
                "stock count F1 3",
                "pin Marnie",
                "demo --fresh"
            })
    void a_command_that_changes_something_is_refused_with_one_line(String words) {
        long before = journal();
        Said said = room.piped("2468\n1357\n", (words + " --demo --at 2026-05-12T09:40 --look-only").split(" "));
        assertEquals(1, said.status(), said.out() + said.err());
        assertEquals(1, said.complaints().size(), said.err());
        assertEquals("", said.out());
        assertEquals(before, journal());
    }

    @Test
    void it_says_why() {
        assertEquals(NO, room.demo("pause", "Wren", "--look-only").err());
        assertEquals(
                NO, room.demo("load", file("{\"classes\": []}"), "--look-only").err());
    }

    private String file(String text) {
        try {
            return Files.writeString(directory.resolve("file.json"), text).toString();
        } catch (IOException broken) {
            throw new AssertionError(broken);
        }
    }

    @Test
    void looking_goes_on() {
        Said said = room.demo("day", "--look-only");
        assertEquals(0, said.status(), said.err());
        assertEquals(room.demo("day").out(), said.out());
    }

    @Test
    void a_workshop_that_only_looks_refuses_every_act_signed_or_not() {
        LocalDateTime morning = LocalDateTime.parse(CommandRoom.MORNING);
        try (Workshop workshop = Workshop.open(
                new Address.InHome(Homes.demonstration(directory)), "wall", Optional.of(morning), Access.LOOK)) {
            Outcome refused = new Outcome.Refused(new Refusal("look_only", List.of()));
            assertEquals(refused, workshop.carryOut(new Act.Stop("P1", false), "P1"));
            assertEquals(refused, workshop.carryOut(new Act.CloseDay("P1"), "P1"));
            assertEquals(refused, workshop.keep(new WhatIf(List.of(new Act.Stop("P1", false))), "P1"));
        }
    }

    @Test
    void its_records_take_no_change_from_anywhere_else_either() {
        long before = journal();
        try (Store store = Store.openToLook(Homes.demonstration(directory))) {
            StoreFailure failure = assertThrows(
                    StoreFailure.class,
                    () -> store.save(
                            new Stamp(Instant.EPOCH, "P1", "wall"), "x", tx -> tx.saveSetting("packedPercent", "90")));
            assertEquals(StoreFailure.Kind.LOOK_ONLY, failure.kind());
            assertThrows(StoreFailure.class, store::compactWhenClosed);
            assertTrue(store.read(Reader::findShop).isPresent());
        }
        assertEquals(before, journal());
    }
}
