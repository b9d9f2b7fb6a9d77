package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.disk.OwnersEyes;
import org.shedboard.store.Reader;
import org.shedboard.store.Store;
import tools.jackson.databind.JsonNode;

/** Words on a command line made to be run by somebody: the database, a spreadsheet, a browser, the file system. */
class HostileWordsTest {
    private static final List<String> SQL = List.of(
            "'); DROP TABLE owner; --",
            "\\'; SHUTDOWN IMMEDIATELY; \" ? x' OR '1'='1 {1} {0} ${jndi:ldap://x}; note y");
    private static final String STEERING = "\u001b]52;c;x\u0007\u009b2J\u202e../../etc/passwd";

    @TempDir
    Path directory;

    private CommandRoom room;
    private Path place;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
        place = Homes.demonstration(directory);
        OwnersEyes.only(place);
    }

    private static Said done(Said said) {
        assertEquals(0, said.status(), said.err());
        return said;
    }

    private static void assertNoFault(Said said) {
        assertFalse(said.err().contains("The program has failed"), said.err());
        assertFalse(said.err().toLowerCase(Locale.ROOT).contains("syntax"), said.err());
        assertTrue(said.complaints().size() <= 6, said.err());
    }

    static List<String> sql() {
        return SQL;
    }

    @ParameterizedTest
    @MethodSource("sql")
    void sql_is_kept_as_the_words_it_is_in_every_field_that_takes_words(String words) {
        done(room.demo(
                "take-in",
                "--class",
                "quad",
                "--owner",
                words,
                "--phone",
                words,
                "--label",
                words,
                "--number",
                words,
                "--work",
                "o",
                "--mud",
                "1",
                "--tag",
                "33",
                "--note",
                words));
        done(room.demo("hold", "33", "--for", "parts", "--note", words));
        done(room.demo("release", "33"));
        done(room.demo("promise", "33", "--say", "16:00", "--to", words, "--why", words));
        done(room.demo("errand", "Wren", "training", "--from", "14:00", "--minutes", "20", "--note", words));
        done(room.demo("check", "H1", "--by", "Marnie", "--locked-out", words));
        done(room.demo("stock", "count", "oil-engine", "3", "--bin", words));
        assertEquals(1, owners(words));
        assertEquals(words, visit("33").get("owner").asString());
        assertEquals(0, room.demo("doctor").status());
    }

    private long owners(String name) {
        try (Store store = Store.open(place)) {
            return store.read(Reader::owners).stream()
                    .filter(owner -> owner.name().equals(name) && owner.phone().equals(name))
                    .count();
        }
    }

    private JsonNode visit(String tag) {
        for (JsonNode each : room.demo("day", "--json").json().get("visits")) {
            if (each.get("tag").asString("").equals(tag)) {
                return each;
            }
        }
        throw new AssertionError("no visit has tag " + tag);
    }

    /** Commands with a word that names something: what it names is not there, and that is all that happens. */
    static Stream<List<String>> naming() {
        return Stream.of(
                List.of("next"),
                List.of("promise"),
                List.of("estimate"),
                List.of("why"),
                List.of("machine"),
                List.of("wear"),
                List.of("report"),
                List.of("find"),
                List.of("number"),
                List.of("start"),
                List.of("release"),
                List.of("arrive"),
                List.of("collect"),
                List.of("call-off"),
                List.of("loan-back"),
                List.of("run-errand"),
                List.of("drop-errand"),
                List.of("owner"),
                List.of("correct-owner"),
                List.of("correct-machine"),
                List.of("forget"),
                List.of("pin"),
                List.of("tally", "--date"),
                List.of("show"),
                List.of("close", "--by"),
                List.of("correct", "--by", "Marnie", "--why", "x"));
    }

    @ParameterizedTest
    @MethodSource("naming")
    void a_name_made_of_sql_or_of_steering_characters_finds_nothing_and_breaks_nothing(List<String> command) {
        long before = changes();
        String word = SQL.get(0) + STEERING + SQL.get(1);
        Said said = room.demo(Stream.concat(command.stream(), Stream.of(word)).toArray(String[]::new));
        assertNoFault(said);
        assertTrue((said.out() + said.err())
                .chars()
                .allMatch(each -> each == '\n' || each >= ' ' && each < 0x7f || each > 0xa0 && each != 0x202e));
        assertEquals(before, changes());
    }

    private long changes() {
        try (Store store = Store.open(place)) {
            return store.read(Reader::lastJournal);
        }
    }

    @Test
    void a_word_of_a_megabyte_is_refused_with_one_line() {
        String huge = "x".repeat(1 << 20);
        for (String option : List.of("--phone", "--note")) {
            Said said =
                    room.demo("take-in", "--class", "quad", "--owner", "A", "--work", "o", "--mud", "1", option, huge);
            assertTrue(said.status() > 0, option);
            assertTrue(said.err().length() < 1_000, option + " " + said.err().length());
            assertNoFault(said);
        }
    }

    @Test
    void a_formula_does_nothing_in_a_table_a_page_or_a_picture() throws IOException {
        String formula = "=1+<script>x";
        done(room.demo(
                "take-in",
                "--class",
                "quad",
                "--owner",
                formula,
                "--work",
                "o",
                "--mud",
                "0",
                "--tag",
                "33",
                "--promise",
                "16:00"));
        done(room.demo("start", "Marnie", "33"));
        String table = done(room.demo("tally", "--csv", "rows")).out();
        assertTrue(table.contains("=1+<script>"), table);
        assertFalse(table.matches("(?s).*(^|[,\n\"])=1.*"), table);
        Path report = directory.resolve("report.html");
        done(room.demo("report", "33", "--html", report.toString()));
        String page = Files.readString(report);
        assertFalse(page.contains("<script>x"), page);
        assertTrue(page.contains("=1+&lt;script"), page);
        Path picture = directory.resolve("board.svg");
        done(room.demo("picture", "board", picture.toString()));
        assertFalse(Files.readString(picture).contains("<script>"), "a picture");
    }

    @Test
    void a_home_by_a_name_that_would_set_the_database_up_otherwise_is_refused() {
        for (String name : List.of("x;INIT=DROP ALL OBJECTS", "x\\y", "x;TRACE_LEVEL_FILE=3")) {
            Said said = room.run("day", "--home", directory.resolve(name).toString());
            assertEquals(1, said.status());
            assertEquals(1, said.complaints().size(), said.err());
            assertFalse(Files.exists(directory.resolve(name)));
        }
    }
}
