package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.board.NamedScreen;
import org.shedboard.files.Fields;
import org.shedboard.grid.Size;
import org.shedboard.testing.Svg;

/** Screens written as pictures by a command. */
class PictureCommandTest {
    private static final Size USUAL = new Size(120, 36);

    @TempDir
    Path directory;

    private CommandRoom room;
    private Path file;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
        file = directory.resolve("pictures").resolve("screen.svg");
    }

    private Svg picture(String screen, String... words) throws IOException {
        String[] all = Stream.concat(Stream.of("picture", screen, file.toString()), Stream.of(words))
                .toArray(String[]::new);
        Said said = room.demo(all);
        assertEquals("", said.err());
        assertEquals("The picture is in " + file + "\n", said.out());
        return Svg.of(Files.readString(file));
    }

    /** Those that something has to be read for, and some that are about nothing; that all of them draw is tested without records. */
    @ParameterizedTest
    @EnumSource(names = {"WEEK", "MONTH", "MACHINE", "FIRST_RUN"})
    void a_screen_can_be_had_by_its_name(NamedScreen screen) throws IOException {
        List<String> lines = picture(Fields.nameOf(screen)).lines(USUAL);
        assertEquals(36, lines.size());
        assertTrue(lines.stream().anyMatch(line -> !line.isBlank()));
    }

    @Test
    void the_board_is_as_it_is_on_the_terminal_at_that_moment() throws IOException {
        Svg svg = picture("board");
        List<String> lines = svg.lines(USUAL);
        assertTrue(
                lines.get(0).contains("Tussock Flat Machinery") && lines.get(0).contains("09:40"), lines.get(0));
        assertTrue(lines.stream().anyMatch(line -> line.contains("Wash pad")), lines.toString());
        assertEquals("The board", svg.only("title").getTextContent());
        assertEquals(
                "Tussock Flat Machinery, Tue 12 May, 09:40: a screen of Shedboard.",
                svg.only("desc").getTextContent());
    }

    @Test
    void a_sheet_is_of_the_visit_that_is_named_and_next_is_the_persons() throws IOException {
        assertTrue(picture("sheet", "--tag", "7").lines(USUAL).toString().contains("Quillgate"));
        String next = picture("next", "--person", "Wren").lines(USUAL).toString();
        assertTrue(next.contains("Wren"), next);
        assertNotEquals(next, picture("next", "--person", "Tobin").lines(USUAL).toString());
    }

    @Test
    void what_has_to_be_read_for_a_screen_is_there() throws IOException {
        String week = picture("week").lines(USUAL).toString();
        assertTrue(week.contains("Mon") && week.contains("Tobin"), week);
        String machine = picture("machine", "--tag", "7", "--size", "80x24")
                .lines(new Size(80, 24))
                .toString();
        assertTrue(machine.contains("Trudge"), machine);
    }

    @Test
    void it_is_as_large_as_is_said() throws IOException {
        Svg svg = picture("shelf", "--size", "80x24");
        assertEquals(
                80 * Svg.CELL_WIDTH + 2 * Svg.MARGIN,
                Double.parseDouble(svg.root().getAttribute("width")),
                0.01);
        assertEquals(
                24 * Svg.CELL_HEIGHT + 2 * Svg.MARGIN,
                Double.parseDouble(svg.root().getAttribute("height")),
                0.01);
    }

    @Test
    void light_and_plain_letters_are_had_when_asked_for() throws IOException {
        String dark = picture("shelf").only("style").getTextContent();
        assertNotEquals(dark, picture("shelf", "--light").only("style").getTextContent());
        assertEquals(dark, picture("shelf", "--dark").only("style").getTextContent());
        String plain = picture("board", "--ascii").lines(USUAL).toString();
        assertTrue(plain.chars().allMatch(letter -> letter < 127), plain);
    }

    @Test
    void a_file_that_is_there_is_replaced_whole_and_nothing_else_is_left() throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, "old ".repeat(100_000));
        picture("shelf");
        assertFalse(Files.readString(file).contains("old old"));
        try (Stream<Path> left = Files.list(file.getParent())) {
            assertEquals(List.of(file), left.toList());
        }
    }

    @Test
    void a_wrong_name_is_a_sentence_that_has_the_right_ones_and_writes_nothing() {
        Said said = room.demo("picture", "bord", file.toString());
        assertEquals(2, said.status());
        String sentence = said.complaints().get(0);
        assertTrue(sentence.contains("\"bord\" is not one of board, yard, sheet, in-hand, next, crew, "), sentence);
        assertEquals(
                List.of("\"shedboard picture --help\" says how it is used."),
                said.complaints().subList(1, 2));
        assertEquals(2, said.complaints().size());
        assertFalse(Files.exists(file));
    }

    @ParameterizedTest
    @ValueSource(strings = {"120", "0x24", "80x", "80x24x3", "1000x24", "-80x24", "axb"})
    void a_size_that_is_none_is_refused(String size) {
        Said said = room.demo("picture", "board", file.toString(), "--size=" + size);
        assertEquals(2, said.status());
        assertTrue(said.complaints().get(0).contains("\"" + size + "\" is no size such as 120x36"), said.err());
        assertFalse(Files.exists(file));
    }

    @Test
    void a_file_that_cannot_be_written_is_a_sentence() throws IOException {
        Files.createDirectories(file);
        Said said = room.demo("picture", "board", file.toString());
        assertEquals(1, said.status());
        assertEquals(1, said.complaints().size());
        assertTrue(said.complaints().get(0).contains(file.toString()), said.err());
    }

    @Test
    void light_and_dark_at_once_are_refused() {
        Said said = room.demo("picture", "board", file.toString(), "--light", "--dark");
        assertEquals(2, said.status());
        assertEquals("Say --light or --dark, not both.", said.complaints().get(0));
    }

    @Test
    void the_answer_can_be_had_as_json() {
        Said said = room.demo("picture", "shelf", file.toString(), "--json");
        assertEquals("shelf", said.json().get("screen").asString());
        assertEquals(file.toString(), said.json().get("file").asString());
    }
}
