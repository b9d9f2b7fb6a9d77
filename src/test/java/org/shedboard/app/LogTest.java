package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.day.Act;
import org.shedboard.disk.OwnersEyes;

/** The log: what is kept in it, and how much. */
class LogTest {
    private static final String NAME = "Quillgate";
    private static final String PHONE = "0000 000 012";

    @TempDir
    Path home;

    private String written() throws IOException {
        return Files.readString(new Log(home).file());
    }

    /** A fault with an act in its message, and another one behind it. */
    private static Throwable failing() {
        Act act = new Act.CorrectOwner("O1", NAME, PHONE);
        return new IllegalArgumentException(
                "no rule for " + act + "\nnor for\tat " + NAME + "(" + PHONE + ")",
                new SQLException("Value too long for \"" + NAME + "\" [22001-240]"));
    }

    @Test
    void an_act_that_fails_leaves_no_name_and_no_number_in_the_log() throws IOException {
        assertTrue(new Log(home).append(failing()));
        assertFalse(written().contains(NAME), written());
        assertFalse(written().contains(PHONE), written());
    }

    @Test
    void what_failed_and_where_is_told() throws IOException {
        new Log(home).append(failing());
        List<String> lines = written().lines().toList();
        assertTrue(lines.get(0).contains("java.lang.IllegalArgumentException (a message of "), lines.get(0));
        assertTrue(
                lines.stream().anyMatch(line -> line.startsWith("\tat org.shedboard.app.LogTest.failing(LogTest.java")),
                written());
        assertTrue(
                lines.stream()
                        .anyMatch(line ->
                                line.contains("Caused by: java.sql.SQLException") && line.endsWith("[22001-240]")),
                written());
    }

    @Test
    void what_a_library_prints_is_told_by_its_length() throws IOException {
        try (PrintStream stream = new Log(home).stream()) {
            stream.println("INSERT INTO owner VALUES ('" + NAME + "')");
            stream.print("half a line of " + NAME);
        }
        assertFalse(written().contains(NAME), written());
        assertEquals(
                2, written().lines().filter(line -> line.contains("not kept")).count(), written());
    }

    @Test
    void a_line_of_a_megabyte_takes_no_room() throws IOException {
        try (PrintStream stream = new Log(home).stream()) {
            stream.println("x".repeat(1 << 20));
        }
        assertTrue(written().contains("(1048576 characters that are not kept)"), written());
    }

    @Test
    void a_full_log_becomes_an_old_one_and_few_are_kept() throws IOException {
        Log log = new Log(home);
        String filling = "x".repeat((int) Log.FULL_BYTES);
        for (int i = 0; i < Log.OLD + 3; i++) {
            log.append(new IllegalStateException());
            Files.writeString(log.file(), filling);
        }
        log.append(new IllegalStateException());
        try (Stream<Path> files = Files.list(log.file().getParent())) {
            assertEquals(Log.OLD + 1, files.count());
        }
        assertEquals(filling, Files.readString(log.old(Log.OLD)));
        assertTrue(Files.size(log.file()) < Log.FULL_BYTES);
    }

    @Test
    void nobody_else_can_read_it() throws IOException {
        Log log = new Log(home.resolve("new"));
        log.append(failing());
        assertTrue(OwnersEyes.isOnly(log.file()));
        assertTrue(OwnersEyes.isOnly(log.file().getParent()));
    }
}
