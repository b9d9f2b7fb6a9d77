package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** The tally as files for other programs: its tables are read back by another library and set beside the same tally as JSON. */
class TallyFilesTest {
    private static final String EVENING = "2026-05-12T16:40";
    private static final CSVFormat WITH_NAMES =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    private String said(String... words) {
        Said said = room.at(EVENING, words);
        assertEquals("", said.err());
        assertEquals(0, said.status());
        return said.out();
    }

    private List<CSVRecord> table(String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of("tally"));
        all.addAll(List.of(words));
        try (var parser = WITH_NAMES.parse(new StringReader(said(all.toArray(String[]::new))))) {
            return parser.getRecords();
        }
    }

    private List<JsonNode> json(String list, String... words) {
        List<String> all = new ArrayList<>(List.of("tally", "--json"));
        all.addAll(List.of(words));
        JsonNode tree = room.at(EVENING, all.toArray(String[]::new)).json();
        return StreamSupport.stream(tree.get(list).spliterator(), false).toList();
    }

    /** Worked out anew, not by the program's own class. */
    private static String hours(JsonNode minutes) {
        return BigDecimal.valueOf(minutes.asInt())
                .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String text(JsonNode value) {
        return value.isNull() ? "" : value.asString();
    }

    @Test
    void each_person_has_a_row_with_the_hours_of_the_tally() throws IOException {
        List<CSVRecord> rows = table("--csv");
        List<JsonNode> people = json("people");
        assertEquals(4, rows.size());
        for (int i = 0; i < rows.size(); i++) {
            CSVRecord row = rows.get(i);
            JsonNode person = people.get(i);
            assertEquals("2026-05-12", row.get("date"));
            assertEquals(person.get("person").asString(), row.get("person"));
            assertEquals(person.get("name").asString(), row.get("name"));
            assertEquals(hours(person.get("attended")), row.get("attended_hours"));
            assertEquals(hours(person.get("onMachines")), row.get("on_machines_hours"));
            assertEquals(hours(person.get("rests")), row.get("rests_hours"));
            assertEquals(hours(person.get("unaccounted")), row.get("unaccounted_hours"));
            assertEquals(hours(person.get("free")), row.get("free_hours"));
            assertEquals(hours(person.get("rounding")), row.get("rounding_hours"));
            assertEquals(hours(person.get("paid")), row.get("paid_hours"));
        }
    }

    @Test
    void other_work_has_a_column_for_each_kind() throws IOException {
        CSVRecord marnie = table("--csv", "people").stream()
                .filter(row -> row.get("name").equals("Marnie"))
                .findFirst()
                .orElseThrow();
        JsonNode other = json("people").stream()
                .filter(person -> person.get("name").asString().equals("Marnie"))
                .findFirst()
                .orElseThrow()
                .get("other");
        assertEquals(hours(other.get("paperwork")), marnie.get("paperwork_hours"));
        assertTrue(new BigDecimal(marnie.get("paperwork_hours")).signum() > 0);
        for (String kind : List.of("cleaning_shop", "fetching", "training", "waiting")) {
            assertEquals("0.00", marnie.get(kind + "_hours"));
        }
    }

    @Test
    void a_span_has_a_row_for_each_person_and_day() throws IOException {
        String[] days = {"--from", "2026-05-11", "--to", "2026-05-12"};
        List<CSVRecord> rows = table("--csv", "people", days[0], days[1], days[2], days[3]);
        List<JsonNode> each = json("days", days);
        assertTrue(each.size() > 4, "only " + each.size() + " days of people");
        assertEquals(
                each.stream()
                        .map(day ->
                                day.get("date").asString() + day.get("person").asString() + hours(day.get("attended")))
                        .toList(),
                rows.stream()
                        .map(row -> row.get("date") + row.get("person") + row.get("attended_hours"))
                        .toList());
    }

    @Test
    void each_line_has_a_row_with_what_it_took_and_what_is_charged() throws IOException {
        List<CSVRecord> rows = table("--csv", "lines");
        List<String> expected = new ArrayList<>();
        for (JsonNode visit : json("visits")) {
            for (JsonNode line : visit.get("lines")) {
                expected.add(String.join(
                        "|",
                        visit.get("visit").asString(),
                        line.get("line").asString(),
                        line.get("name").asString(),
                        line.get("payer").asString(),
                        line.get("estimated").asString(),
                        line.get("worked").asString(),
                        line.get("cleaning").asString(),
                        line.get("chargeable").isNull() ? "" : hours(line.get("chargeable")),
                        text(visit.get("comesBackFrom"))));
            }
        }
        assertTrue(expected.size() > 3, expected.toString());
        assertEquals(
                expected,
                rows.stream()
                        .map(row -> String.join(
                                "|",
                                row.get("visit"),
                                row.get("line"),
                                row.get("work"),
                                row.get("payer"),
                                row.get("estimated_minutes"),
                                row.get("worked_minutes"),
                                row.get("cleaning_minutes"),
                                row.get("chargeable_hours"),
                                row.get("comes_back_from")))
                        .toList());
    }

    @Test
    void what_is_not_finished_has_neither_a_time_nor_hours_to_charge() throws IOException {
        List<CSVRecord> rows = table("--csv", "lines");
        CSVRecord done = only(rows, "5");
        assertEquals("2.50", done.get("chargeable_hours"));
        assertTrue(done.get("finished").startsWith("2026-05-12T"), done.toString());
        assertTrue(done.get("finished").endsWith("+10:00"), done.toString());
        CSVRecord open = rows.stream()
                .filter(row -> row.get("finished").isEmpty())
                .findFirst()
                .orElseThrow();
        assertEquals("", open.get("chargeable_hours"));
    }

    private static CSVRecord only(List<CSVRecord> rows, String tag) {
        List<CSVRecord> those =
                rows.stream().filter(row -> row.get("tag").equals(tag)).toList();
        assertEquals(1, those.size(), rows.toString());
        return those.get(0);
    }

    @Test
    void the_rows_are_those_of_the_tally_with_what_was_put_right() throws IOException {
        String row = json("rows", "--rows").stream()
                .filter(each -> each.get("what").asString().equals("paperwork"))
                .findFirst()
                .orElseThrow()
                .get("row")
                .asString();
        said("correct", row, "--by", "Marnie", "--time", "8:50-9:20", "--why", "=was at \"tea\", talking");
        List<JsonNode> expected = json("rows", "--rows");
        List<CSVRecord> rows = table("--csv", "rows");
        assertEquals(expected.size(), rows.size());
        for (int i = 0; i < rows.size(); i++) {
            CSVRecord each = rows.get(i);
            JsonNode tree = expected.get(i);
            assertEquals(tree.get("row").asString(), each.get("row"));
            assertEquals(tree.get("from").asString(), each.get("from"));
            assertEquals(text(tree.get("to")), each.get("to"));
            assertEquals(tree.get("what").asString(), each.get("what"));
            assertEquals(tree.get("counts").asString(), each.get("counts"));
            assertEquals(text(tree.get("replaces")), each.get("replaces"));
            assertEquals(text(tree.get("correctedAt")), each.get("corrected_at"));
        }
        CSVRecord corrected = rows.stream()
                .filter(each -> each.get("replaces").equals(row))
                .findFirst()
                .orElseThrow();
        // a spreadsheet would run what begins with a sign of equality
        assertEquals("'=was at \"tea\", talking", corrected.get("why"));
    }

    @Test
    void a_byte_order_mark_stands_before_the_table_only_when_asked_for() {
        String plain = said("tally", "--csv");
        assertTrue(plain.startsWith("date,person,name,"), plain);
        assertEquals("\uFEFF" + plain, said("tally", "--csv", "--bom"));
    }

    @Test
    void each_line_of_the_table_ends_as_the_standard_asks() {
        String text = said("tally", "--csv", "lines");
        assertTrue(text.endsWith("\r\n"));
        assertFalse(text.replace("\r\n", "").contains("\n"), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--csv --json",
                "--csv lines --rows",
                "--csv --rows --json",
                "--html --csv",
                "--html --json",
                "--html --rows"
            })
    void ways_out_that_do_not_go_together_are_refused_in_a_sentence(String options) {
        Said said = room.at(EVENING, ("tally " + options).split(" "));
        assertEquals(2, said.status());
        assertEquals("", said.out());
        assertEquals(
                "Say only one of --csv, --html, --json and --rows; only --rows and --json go together.",
                said.complaints().get(0));
    }

    @Test
    void the_sheet_is_a_whole_page_with_the_shop_the_day_and_everybody() {
        String page = said("tally", "--html");
        assertTrue(page.startsWith("<!doctype html>\n<html lang=\"en\">"), page);
        assertTrue(page.endsWith("</html>\n"));
        assertTrue(page.contains("<title>Tussock Flat Machinery: Hours of Tue 12 May 2026</title>"));
        for (String name : List.of("Marnie", "Tobin", "Wren", "Jory")) {
            assertTrue(page.contains("<bdi>" + name + "</bdi>"), name);
        }
    }

    @Test
    void what_steers_a_terminal_is_not_in_a_file_but_names_are_whole() throws IOException {
        Path file = directory.resolve("shop.json");
        String name = "\u05d0\u05d1 \u202e<b>&\"'\u00e9";
        Files.writeString(
                file,
                LoadCommandTest.SMALL_SHOP.replace("\"Ash\"", "\"\\u05d0\\u05d1 \\u202e<b>&\\\"'\\u00e9\\u001b\""));
        CommandRoom small = CommandRoom.empty(directory.resolve("small"));
        assertEquals(0, small.run("load", file.toString()).status());
        assertEquals(0, small.run("open", "--by", "P1").status());
        try (var parser = WITH_NAMES.parse(
                new StringReader(small.run("tally", "--csv", "--ascii").out()))) {
            assertEquals(name + "\uFFFD", parser.getRecords().get(0).get("name"));
        }
        assertFalse(small.run("tally", "--html").out().contains("\u001b"));
    }

    @Test
    void a_byte_order_mark_before_anything_else_is_refused() {
        Said said = room.at(EVENING, "tally", "--bom");
        assertEquals(2, said.status());
        assertEquals("--bom goes with --csv.", said.complaints().get(0));
    }

    @Test
    void a_table_that_there_is_not_is_refused_with_those_there_are() {
        Said said = room.at(EVENING, "tally", "--csv", "machines");
        assertEquals(2, said.status());
        assertTrue(said.err().contains("people, lines, rows"), said.err());
    }
}
