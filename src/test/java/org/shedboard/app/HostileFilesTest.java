package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.app.CommandRoom.Said;

/** Files made to break what reads them: refused with a line for each fault, in no time, and nothing is changed. */
@Timeout(60)
class HostileFilesTest {
    private static final int MEGABYTE = 1 << 20;

    @TempDir
    Path directory;

    /** By what is wrong with them. */
    static Map<String, String> texts() {
        return Map.ofEntries(
                Map.entry("arrays a hundred thousand deep", "[".repeat(100_000)),
                Map.entry("objects a hundred thousand deep", "{\"a\":".repeat(100_000)),
                Map.entry("a name twice", "{\"places\": [], \"places\": [], \"people\": []}"),
                Map.entry("a number of a hundred thousand digits", "{\"places\": " + "9".repeat(100_000) + "}"),
                Map.entry("a number with a huge exponent", "{\"places\": [], \"people\": [], \"zone\": 1e999999999}"),
                Map.entry("a text of a megabyte", "{\"places\": \"" + "x".repeat(MEGABYTE) + "\"}"),
                Map.entry("a name of a megabyte", "{\"" + "x".repeat(MEGABYTE) + "\": 1}"),
                Map.entry("an escape", "{\"\u001b]0;owned\u0007\": 1}"),
                Map.entry("nothing", ""),
                Map.entry("no end", "{\"places\": ["),
                Map.entry("half a pair", "{\"places\": \"\\ud800\"}"));
    }

    static Stream<Arguments> files() {
        return texts().entrySet().stream()
                .flatMap(each -> Stream.of("load", "notices", "pack")
                        .map(command -> Arguments.of(command, each.getKey(), each.getValue())));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("files")
    void a_file_that_is_no_file_of_ours_is_refused_with_short_lines(String command, String what, String text)
            throws IOException {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        Path file = Files.writeString(directory.resolve("file.json"), text);
        assertRefused(room.demo(command, file.toString()));
    }

    private static void assertRefused(Said said) {
        assertTrue(said.status() == 1 || said.status() == 2, said.out());
        assertEquals("", said.out());
        List<String> lines = said.complaints();
        assertFalse(lines.isEmpty());
        assertTrue(lines.size() <= 6, said.err());
        for (String line : lines) {
            assertTrue(
                    line.length() < 400,
                    line.length() + " characters: " + line.substring(0, Math.min(300, line.length())));
            assertTrue(line.chars().allMatch(each -> each >= ' ' && each != 0x7f), line);
        }
        assertFalse(said.err().contains("The program has failed"), said.err());
    }

    @Test
    void a_file_of_a_gigabyte_is_not_read() throws IOException {
        Path file = directory.resolve("file.json");
        try (RandomAccessFile hole = new RandomAccessFile(file.toFile(), "rw")) {
            hole.setLength(1L << 30);
        }
        Said said = CommandRoom.empty(directory).run("pack", file.toString());
        assertEquals(2, said.status());
        assertEquals("It is larger than 64 MB; no file that is read here is.\n", said.err());
    }

    @Test
    void what_is_piped_in_without_end_is_not_read_to_it() {
        CommandRoom room = CommandRoom.empty(directory);
        assertEquals(2, room.piped(" ".repeat((64 << 20) + 1), "pack", "-").status());
    }

    @Test
    void a_name_of_a_megabyte_in_a_shop_is_a_fault_with_its_place() throws IOException {
        CommandRoom room = CommandRoom.empty(directory);
        for (int length : List.of(3_000, MEGABYTE)) {
            String shop = LoadCommandTest.SMALL_SHOP.replace("\"Ash\"", "\"" + "A".repeat(length) + "\"");
            Path file = Files.writeString(directory.resolve("shop.json"), shop, StandardCharsets.UTF_8);
            assertRefused(room.run("load", file.toString()));
        }
    }

    @Test
    void a_folder_a_missing_file_and_one_that_is_no_text_are_refused() throws IOException {
        CommandRoom room = CommandRoom.empty(directory);
        Path bytes = Files.write(directory.resolve("bytes"), new byte[] {(byte) 0xc3, 0x28, (byte) 0xff});
        for (String file : List.of(
                directory.toString(), bytes.toString(), "/dev/null", "..", "no/such\nfile", "a\u0000b", "\u001b[2J")) {
            assertRefused(room.run("pack", file));
            assertRefused(room.run("load", file));
        }
    }
}
