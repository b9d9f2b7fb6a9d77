package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** {@code shedboard number}, where there is no shop. */
class NumberCommandTest {
    @TempDir
    private Path home;

    private CommandRoom room;

    @BeforeEach
    void enter() {
        room = CommandRoom.empty(home.resolve("nothing"));
    }

    @Test
    void a_right_number_is_told_with_both_its_years_and_no_shop_is_made() {
        Said said = room.run("number", "1M8GDM9AXAP042788", "--at", "2026-05-12T09:40");
        assertEquals(0, said.status());
        assertEquals("Model year: 1980 or 2010", said.out().lines().toList().get(1));
        assertTrue(said.out().contains("on machines like these it decides nothing"), said.out());
        assertTrue(Files.notExists(home.resolve("nothing")));
    }

    @Test
    void a_wrong_check_digit_is_told_with_the_right_one() {
        JsonNode tree = room.run("number", "1m8gdm9a5kp042788", "--json").json();
        assertEquals("vehicle", tree.get("kind").stringValue());
        assertEquals("wrong", tree.get("check").stringValue());
        assertTrue(tree.get("fails").booleanValue());
        assertEquals("X", tree.get("expectedDigit").stringValue());
        assertEquals("1m8gdm9a5kp042788", tree.get("number").stringValue());
        assertEquals("check-digit-wrong", tree.get("remarks").get(0).get("kind").stringValue());
    }

    @Test
    void a_product_number_is_told_as_one_that_nothing_is_failed_by() {
        Said said = room.run("number", "1M8GDM9AAKP042788");
        assertEquals(0, said.status());
        assertEquals(
                "1M8GDM9AAKP042788: product number, check letter not verifiable",
                said.out().lines().findFirst().orElseThrow());
    }

    @Test
    void a_letter_read_for_a_digit_is_suggested() {
        JsonNode tree = room.run("number", "IM8GDM9AXKP042788", "--json").json();
        assertEquals("1M8GDM9AXKP042788", tree.get("misread").stringValue());
    }

    @Test
    void a_number_in_several_words_is_one_number() {
        JsonNode tree =
                room.run("number", "1M8", "GDM9AX", "KP042788", "--json").json();
        assertEquals("right", tree.get("check").stringValue());
        assertEquals("1M8GDM9AXKP042788", tree.get("judged").stringValue());
    }

    @Test
    void a_command_without_a_number_is_wrong_use() {
        Said said = room.run("number");
        assertEquals(2, said.status());
        assertEquals(List.of(""), List.of(said.out()));
    }
}
