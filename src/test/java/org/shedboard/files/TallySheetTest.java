package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.hours.Stretch;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.shop.Visit;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.LineTally;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.TallyWords;
import org.shedboard.tally.VisitTally;
import org.shedboard.testing.Browser;
import tools.jackson.databind.JsonNode;

/** The sheet as a browser reads, prints and shows it, beside the tally that it was made from. */
@Timeout(120)
class TallySheetTest {
    private static final SpanTally BUSY = BusyDay.tally(Map.of());

    /** A4 is 210 mm by 297 mm, and a point is 1/72 inch. */
    private static final double A4_WIDTH_POINTS = 210 / 25.4 * 72;

    private static final double A4_HEIGHT_POINTS = 297 / 25.4 * 72;

    /** The page is 186 mm in the middle of 1000 pixels, of which an inch has 96. */
    private static final int LEFT = (int) (500 - 93 / 25.4 * 96) - 1;

    private static final int RIGHT = (int) (500 + 93 / 25.4 * 96) + 1;

    @TempDir
    Path folder;

    @BeforeEach
    void open() throws InterruptedException {
        Browser.demand();
    }

    private static String html(SpanTally tally) {
        return new TallySheet(tally).text();
    }

    private JsonNode read(SpanTally tally) throws Exception {
        return SheetPage.open(folder, html(tally));
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::asString)
                .toList();
    }

    private static List<String> figures(JsonNode page, String table) {
        return texts(page.get("figures")).stream()
                .filter(figure -> figure.startsWith(table + " "))
                .toList();
    }

    private PDDocument printed(String html) throws Exception {
        return Loader.loadPDF(Browser.pdf(Files.writeString(folder.resolve("sheet.html"), html)));
    }

    /** Worked out anew, not by the program's own class. */
    private static String hours(int minutes) {
        return BigDecimal.valueOf(minutes)
                .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String figure(String table, String row, String name, int minutes, String text) {
        return String.join(" ", table, row, name, String.valueOf(minutes), text);
    }

    private static Ledger span(int daysBefore) {
        Ledger day = BUSY.ledger();
        return new Ledger(
                day.books(),
                day.from().minusDays(daysBefore),
                day.until(),
                day.openings(),
                day.visits(),
                day.before(),
                day.entries(),
                day.now());
    }

    @Test
    void every_figure_of_every_person_stands_in_the_page() throws Exception {
        List<String> expected = new ArrayList<>();
        for (PersonHours person : BUSY.hours().people()) {
            Map<String, Integer> columns = new LinkedHashMap<>();
            columns.put("attended", person.attended());
            columns.put("on-machines", person.onMachines());
            columns.put("other", person.otherMinutes());
            columns.put("rests", person.rests());
            columns.put("unaccounted", person.unaccounted());
            columns.put("rounding", person.rounding());
            columns.put("paid", person.paid());
            columns.put("free", person.free());
            columns.forEach((name, minutes) ->
                    expected.add(figure("people", person.personId(), name, minutes, hours(minutes))));
        }
        List<String> found = figures(read(BUSY), "people");
        assertEquals(6 * 8, expected.size());
        assertEquals(expected, found.subList(0, expected.size()));
        int attended = BUSY.hours().attended();
        assertEquals(figure("people", "all", "attended", attended, hours(attended)), found.get(expected.size()));
    }

    @Test
    void every_figure_of_every_line_stands_in_the_page() throws Exception {
        List<String> expected = new ArrayList<>();
        for (VisitTally visit : BUSY.visits()) {
            for (LineTally line : visit.lines()) {
                String row = visit.visit().id() + "/" + line.line().id();
                expected.add(figure("machines", row, "estimated", line.estimated(), "" + line.estimated()));
                expected.add(figure("machines", row, "worked", line.worked(), "" + line.worked()));
                expected.add(figure("machines", row, "cleaning", line.cleaning(), "" + line.cleaning()));
                line.chargeable()
                        .ifPresent(
                                charged -> expected.add(figure("machines", row, "charged", charged, hours(charged))));
            }
        }
        List<String> found = figures(read(BUSY), "machines");
        assertTrue(expected.size() > 40, "only " + expected.size() + " figures");
        assertEquals(expected, found.subList(0, expected.size()));
        assertEquals(
                figure("machines", "all", "charged", BUSY.chargeable(), hours(BUSY.chargeable())),
                found.get(found.size() - 1));
    }

    @Test
    void what_is_charged_is_added_up_for_each_owner_and_payer() throws Exception {
        Map<String, Integer> sums = new LinkedHashMap<>();
        for (VisitTally visit : BUSY.visits()) {
            String owner = BUSY.ledger().books().ownerOf(visit.visit()).id();
            for (LineTally line : visit.lines()) {
                line.chargeable()
                        .ifPresent(minutes -> sums.merge(
                                owner + "/" + Fields.nameOf(line.line().payer()), minutes, Integer::sum));
            }
        }
        List<String> expected = new ArrayList<>();
        sums.forEach((row, minutes) -> expected.add(figure("charges", row, "charged", minutes, hours(minutes))));
        expected.add(figure("charges", "all", "charged", BUSY.chargeable(), hours(BUSY.chargeable())));
        assertTrue(sums.size() > 5 && sums.keySet().stream().anyMatch(row -> row.endsWith("/maker")), sums.toString());
        assertEquals(expected, figures(read(BUSY), "charges"));
    }

    @Test
    void the_shop_what_is_open_and_the_rules_are_said_as_elsewhere() throws Exception {
        JsonNode page = read(BUSY);
        assertEquals(TallyWords.shop(BUSY), texts(page.get("shop")));
        assertEquals(List.of("Nothing is open."), texts(page.get("open")));
        assertEquals(List.of("Closed by Marnie, 16:41."), texts(page.get("closed")));
        String rules = String.join(" ", TallyWords.rules(BUSY.ledger().books().hoursRules()));
        assertEquals(List.of(rules), texts(page.get("rules")));
        assertEquals(
                "Tussock Flat Machinery: Hours of Tue 12 May 2026",
                page.get("title").asString());
        assertEquals("en", page.get("language").asString());
    }

    @Test
    void a_day_that_nobody_closed_says_so_and_what_is_open() throws Exception {
        Ledger day = BUSY.ledger();
        Ledger left = new Ledger(
                day.books(),
                day.from(),
                day.until(),
                List.of(BusyDay.morning().opening().orElseThrow()),
                BusyDay.morning().visits(),
                List.of(),
                BusyDay.morning().entries(),
                day.now().plusSeconds(24 * 3600));
        SpanTally tally = SpanTally.of(left);
        JsonNode page = read(tally);
        assertEquals(List.of("Not closed."), texts(page.get("closed")));
        assertEquals(TallyWords.open(tally), texts(page.get("open")));
        assertTrue(texts(page.get("open")).get(0).contains("never said when they left"), page.toString());
    }

    @Test
    void corrections_tell_what_was_what_is_why_and_by_whom() throws Exception {
        List<List<String>> rows = StreamSupport.stream(
                        read(BUSY).get("corrections").spliterator(), false)
                .map(TallySheetTest::texts)
                .toList();
        assertEquals(
                List.of(
                        List.of(
                                "Jory",
                                "not written down",
                                "06:20 to 06:50 training",
                                "came early to be shown the wash pad & its drain",
                                "Marnie, 16:30"),
                        List.of(
                                "Jory",
                                "07:05 to 07:45 cleaning the shop",
                                "struck out",
                                "never was <there>",
                                "Marnie, 16:30")),
                rows);
    }

    @Test
    void each_picture_says_in_words_what_it_shows() throws Exception {
        JsonNode page = read(BUSY);
        assertEquals(6 + 12, page.get("pictures").size());
        List<String> wren = texts(page.get("pictures").get(2));
        assertEquals("Wren, Tue 12 May 2026", wren.get(0));
        List<Stretch> stretches = BUSY.hours().days().stream()
                .filter(day -> day.personId().equals("P3"))
                .findFirst()
                .orElseThrow()
                .stretches();
        assertTrue(wren.get(1).contains("7 (Quillgate, Nettle Flat); "), wren.get(1));
        assertTrue(wren.get(1).contains(" break, paid; "), wren.get(1));
        assertTrue(wren.get(1).contains(" paperwork; "), wren.get(1));
        for (Stretch stretch : stretches.subList(0, 2)) {
            String begins =
                    stretch.from().atZone(BUSY.ledger().books().shop().zone()).toLocalTime() + " to ";
            assertTrue(wren.get(1).contains(begins), begins + wren.get(1));
        }
        VisitTally first = BUSY.visits().get(0);
        assertEquals(
                first.estimated() + " min estimated, " + first.worked() + " min worked",
                page.get("pictures").get(6).get(1).asString());
        assertEquals("06:00", page.get("hours").get(0).asString());
        assertEquals("17:00", page.get("hours").get(11).asString());
    }

    @Test
    void every_heading_says_what_it_heads() throws Exception {
        List<String> scopes = texts(read(BUSY).get("headings"));
        assertTrue(scopes.size() > 40, "only " + scopes.size());
        assertTrue(List.of("row", "col", "rowgroup").containsAll(scopes), scopes.toString());
    }

    @Test
    void a_week_has_a_bar_for_each_person_and_day_and_a_longer_span_none() throws Exception {
        JsonNode week = read(SpanTally.of(span(6)));
        assertEquals(6, week.get("bars").size());
        assertEquals("Marnie, Tue 12", week.get("bars").get(0).asString());
        assertEquals(
                "Days that were opened: 1, closed: 1", week.get("closed").get(0).asString());
        assertEquals(
                "Tue 12 May 2026: Closed by Marnie, 12 May 16:41.",
                week.get("closed").get(1).asString());
        JsonNode longer = read(SpanTally.of(span(7)));
        assertEquals(0, longer.get("bars").size());
        assertEquals(figures(week, "people"), figures(longer, "people"));
    }

    @Test
    void a_day_that_was_not_opened_is_a_page_that_says_so() throws Exception {
        LocalDate date = BUSY.ledger().from().plusDays(5);
        Instant now = BUSY.ledger().now();
        JsonNode page = read(SpanTally.of(new Ledger(
                BUSY.ledger().books(), date, date.plusDays(1), List.of(), List.of(), List.of(), List.of(), now)));
        assertEquals(List.of("That day was not opened, so there is nothing to tally."), texts(page.get("closed")));
        assertEquals(0, page.get("bars").size());
    }

    /** Names that would be markup, that run from the right, that turn the direction and do not turn it back. */
    @Test
    void hostile_names_come_back_equal() throws Exception {
        List<String> hostile = List.of(
                "<b>Quill & \"Gate\"</b>",
                "<script>document.title = 'x'</script>",
                "משק שדה (12) <י>",
                "\u202eevil \u2066odd",
                "&lt;&amp;' \u00a0 ]]> <!-- ",
                "مزرعة 7, التل");
        Map<String, String> names = new LinkedHashMap<>();
        List<String> expected = new ArrayList<>();
        for (VisitTally visit : BUSY.visits()) {
            String owner = BUSY.ledger().books().ownerOf(visit.visit()).id();
            names.putIfAbsent(owner, hostile.get(names.size() % hostile.size()));
            expected.add(names.get(owner));
        }
        assertTrue(expected.containsAll(hostile), expected.toString());
        JsonNode page = read(BusyDay.tally(names));
        assertEquals(expected, texts(page.get("owners")));
        assertTrue(
                texts(page.get("charged")).containsAll(hostile),
                page.get("charged").toString());
        assertEquals(expected.get(0), page.get("pictures").get(6).get(0).asString());
        assertEquals(
                "Tussock Flat Machinery: Hours of Tue 12 May 2026",
                page.get("title").asString());
        assertEquals(1, page.get("scripts").asInt(), "only the test's own script is in the page");
    }

    @Test
    void the_page_needs_nothing_but_itself() throws Exception {
        String html = html(BUSY);
        for (String way : List.of("http", "src=", "href=", "@import", "url(\"", "<link", "<script", "<img")) {
            assertFalse(html.contains(way), way);
        }
        assertEquals(0, read(BUSY).get("fetched").asInt());
    }

    @Test
    void nothing_is_wider_than_the_room_it_has() throws Exception {
        assertEquals(List.of(), texts(read(BUSY).get("wide")));
    }

    @Test
    void a_day_of_twelve_machines_and_six_people_is_printed_on_one_side_of_a4() throws Exception {
        assertEquals(
                "12 visits, 6 people",
                BUSY.visits().size() + " visits, " + BUSY.hours().people().size() + " people");
        try (PDDocument paper = printed(html(BUSY))) {
            assertEquals(1, paper.getNumberOfPages());
            assertEquals(A4_WIDTH_POINTS, paper.getPage(0).getMediaBox().getWidth(), 1);
            assertEquals(A4_HEIGHT_POINTS, paper.getPage(0).getMediaBox().getHeight(), 1);
            String text = new PDFTextStripper().getText(paper);
            for (VisitTally visit : BUSY.visits()) {
                Visit each = visit.visit();
                assertTrue(text.contains(BUSY.ledger().books().ownerOf(each).name()), text);
                assertTrue(text.contains(BUSY.ledger().books().machineOf(each).label()), text);
            }
            assertTrue(text.contains("Foreman"), text);
        }
    }

    @Test
    void a_long_span_goes_over_pages_with_all_its_lines() throws Exception {
        List<VisitTally> many = new ArrayList<>();
        for (int round = 0; round < 12; round++) {
            many.addAll(BUSY.visits());
        }
        SpanTally tally = new SpanTally(BUSY.ledger(), BUSY.hours(), many, BUSY.hoists(), BUSY.promises());
        try (PDDocument paper = printed(html(tally))) {
            assertTrue(paper.getNumberOfPages() > 3, paper.getNumberOfPages() + " pages");
            String text = new PDFTextStripper().getText(paper);
            assertEquals(12, text.split("Deck belt, change", -1).length - 1);
            assertTrue(text.split("Line, and who pays", -1).length > 3, "the headings stand on each page");
        }
    }

    /** What a printer without colours does with it is then what is seen here. */
    @Test
    void it_is_drawn_in_black_grey_and_white_and_nothing_hangs_over_its_edges() throws Exception {
        Path page = Files.writeString(folder.resolve("sheet.html"), html(BUSY));
        BufferedImage seen = ImageIO.read(new ByteArrayInputStream(Browser.picture(page, 1000, 1400)));
        int dark = 0;
        for (int y = 0; y < seen.getHeight(); y++) {
            for (int x = 0; x < seen.getWidth(); x++) {
                int red = seen.getRGB(x, y) >> 16 & 0xff;
                int green = seen.getRGB(x, y) >> 8 & 0xff;
                int blue = seen.getRGB(x, y) & 0xff;
                assertTrue(Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue)) < 3);
                boolean isOutside = x < LEFT || x > RIGHT;
                assertTrue(!isOutside || red == 255, "something hangs over at " + x + ", " + y);
                dark += red < 64 ? 1 : 0;
            }
        }
        assertTrue(dark > 10_000, "only " + dark + " dark pixels");
    }
}
