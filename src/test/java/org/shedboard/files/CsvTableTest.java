package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.files.CsvTable.Cell;

/** Tables as text: the examples of RFC 4180, and what another library reads of many strange ones. */
class CsvTableTest {
    /** The whole grammar of RFC 4180, with erratum 5714: nothing stands between a closing quote and a comma or an end of line. */
    private static final Pattern RFC_4180 = grammar();

    private static Pattern grammar() {
        String field = "(?:\"(?:[^\"]|\"\")*+\"|[^\",\\r\\n]*+)";
        return Pattern.compile("(?:" + field + "(?:," + field + ")*+\\r\\n)++");
    }

    private static CsvTable table(String... cells) {
        return new CsvTable(List.of(cells), List.of());
    }

    private static List<List<String>> readBack(String text) throws IOException {
        try (var parser = CSVFormat.RFC4180.parse(new StringReader(text))) {
            return parser.stream().map(CSVRecord::toList).toList();
        }
    }

    /** RFC 4180, rules 1 to 3. */
    @Test
    void each_row_is_a_line_of_its_own_and_the_last_one_ends_too() {
        CsvTable table = new CsvTable(
                List.of("aaa", "bbb", "ccc"), List.of(List.of(Cell.of("zzz"), Cell.of("yyy"), Cell.of("xxx"))));
        assertEquals("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", table.text());
    }

    /** RFC 4180, rule 6. */
    @Test
    void a_cell_with_a_line_break_stands_in_quotes() {
        assertEquals("aaa,\"b\r\nbb\",ccc\r\n", table("aaa", "b\r\nbb", "ccc").text());
    }

    /** RFC 4180, rules 6 and 7. */
    @Test
    void a_quote_within_a_cell_is_doubled_and_a_comma_is_quoted() {
        assertEquals(
                "aaa,\"b\"\"bb\",\"c,cc\"\r\n", table("aaa", "b\"bb", "c,cc").text());
    }

    /** RFC 4180, rule 4. */
    @Test
    void blanks_belong_to_the_cell_and_need_no_quotes() {
        assertEquals(" a ,b\r\n", table(" a ", "b").text());
    }

    /** RFC 4180, rule 4. */
    @Test
    void a_row_with_a_cell_too_few_is_refused() {
        List<List<Cell>> rows = List.of(List.of(Cell.of("a"), Cell.of("b")), List.of(Cell.of("a")));
        var refused = assertThrows(IllegalArgumentException.class, () -> new CsvTable(List.of("x", "y"), rows));
        assertEquals("row 2 has 1 cells and the table 2 columns", refused.getMessage());
    }

    @Test
    void a_row_of_one_empty_cell_is_still_a_row() throws IOException {
        String text = new CsvTable(List.of("note"), List.of(List.of(Cell.of("")))).text();
        assertEquals(List.of(List.of("note"), List.of("")), readBack(text));
        assertEquals("note\r\n\"\"\r\n", text);
    }

    /** The characters that OWASP's page on CSV injection names, from memory; the wide signs and the blanks are our own caution. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+2",
                "+61 2 5550",
                "-5",
                "@SUM(A1)",
                "\tx",
                "\r=1",
                "\n=1",
                "  =1+2",
                "\u00A0=1",
                "'=1",
                "\uFF1D1+2"
            })
    void a_text_that_a_spreadsheet_would_run_gets_an_apostrophe(String text) throws IOException {
        assertEquals(
                List.of(List.of("x", "'" + text)), readBack(table("x", text).text()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tag 14", "Jory's mower", "'quoted'", "a=b", "7-9", "", "mud: 3 - deep", "#4"})
    void any_other_text_stays_as_it_is(String text) throws IOException {
        assertEquals(List.of(List.of("x", text)), readBack(table("x", text).text()));
    }

    @ParameterizedTest
    @CsvSource({"-0.50, -0.50", "7.50, 7.50", "0, 0", "2E+3, 2000", "-1E-7, -0.0000001"})
    void a_number_is_written_as_a_number_in_every_country(BigDecimal number, String written) {
        CsvTable table = new CsvTable(List.of("hours"), List.of(List.of(Cell.of(number))));
        assertEquals("hours\r\n" + written + "\r\n", table.text());
    }

    @Test
    void a_whole_number_below_zero_gets_no_apostrophe() {
        assertEquals("n\r\n-12\r\n", new CsvTable(List.of("n"), List.of(List.of(Cell.of(-12)))).text());
    }

    @Test
    void another_library_reads_2000_strange_tables_of_seed_4180_as_they_were() throws IOException {
        Random chance = new Random(4180);
        int guarded = 0;
        for (int round = 0; round < 2000; round++) {
            List<List<String>> cells = strangeCells(chance);
            String text = of(cells).text();
            List<List<String>> read = readBack(text);
            assertTrue(RFC_4180.matcher(text).matches(), text);
            assertTrue(read.stream().flatMap(List::stream).noneMatch(CsvTableTest::isFormula), text);
            assertEquals(cells, read.stream().map(CsvTableTest::unguarded).toList(), text);
            guarded += cells.equals(read) ? 0 : 1;
        }
        assertTrue(guarded > 500 && guarded < 2000, guarded + " tables with a guarded cell");
    }

    private static CsvTable of(List<List<String>> lines) {
        List<List<Cell>> rows = lines.subList(1, lines.size()).stream()
                .map(line -> line.stream().map(Cell::of).toList())
                .toList();
        return new CsvTable(lines.get(0), rows);
    }

    private static List<List<String>> strangeCells(Random chance) {
        int columns = 1 + chance.nextInt(5);
        int rows = chance.nextInt(6);
        List<List<String>> lines = new ArrayList<>();
        for (int line = 0; line <= rows; line++) {
            List<String> cells = new ArrayList<>();
            for (int column = 0; column < columns; column++) {
                cells.add(StrangeText.of(chance));
            }
            lines.add(cells);
        }
        return lines;
    }

    /** Takes away the apostrophe of those cells that would be a formula without their apostrophes. */
    private static List<String> unguarded(List<String> cells) {
        return cells.stream()
                .map(cell -> cell.startsWith("'") && isFormula(cell.replaceFirst("^'+", "")) ? cell.substring(1) : cell)
                .toList();
    }

    private static boolean isFormula(String text) {
        int at = 0;
        while (at < text.length() && isBlank(text.charAt(at))) {
            at++;
        }
        return "\t\r\n".indexOf((text + " ").charAt(0)) >= 0
                || at < text.length() && "=+-@".indexOf(text.charAt(at)) >= 0;
    }

    private static boolean isBlank(char character) {
        return Character.isWhitespace(character) || Character.isSpaceChar(character);
    }
}
