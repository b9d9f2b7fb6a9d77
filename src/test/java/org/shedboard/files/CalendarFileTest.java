package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.files.CalendarFile.Event;

/** Events as iCalendar: the examples and rules of RFC 5545, and what another library reads of hostile texts. */
class CalendarFileTest {
    private static final Instant STAMP = Instant.parse("1997-06-10T17:23:45Z");
    private static final Instant FROM = Instant.parse("1997-07-14T17:00:00Z");
    private static final Instant TO = Instant.parse("1997-07-15T04:00:00Z");

    private static Event event(String summary) {
        return new Event("visit-1@shed", FROM, Optional.of(TO), summary, "", STAMP);
    }

    private static String textOf(Event event) {
        return new CalendarFile(List.of(event)).text();
    }

    private static List<VEvent> readBack(String text) throws Exception {
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        assertFalse(calendar.validate().hasErrors(), () -> calendar.validate() + "\n" + text);
        return calendar.getComponents(Component.VEVENT);
    }

    private static String value(VEvent event, String property) {
        return event.getProperty(property).map(Property::getValue).orElse("");
    }

    /** The least calendar of RFC 5545, 3.4, with our own product. */
    @Test
    void an_event_is_written_as_in_the_example_of_the_standard() {
        Event party = new Event(
                "19970610T172345Z-AF23B2@example.com", FROM, Optional.of(TO), "Bastille Day Party", "", STAMP);
        assertEquals("""
                BEGIN:VCALENDAR
                VERSION:2.0
                PRODID:-//Shedboard//Bay board//EN
                BEGIN:VEVENT
                UID:19970610T172345Z-AF23B2@example.com
                DTSTAMP:19970610T172345Z
                DTSTART:19970714T170000Z
                DTEND:19970715T040000Z
                SUMMARY:Bastille Day Party
                END:VEVENT
                END:VCALENDAR
                """.replace("\n", "\r\n"), textOf(party));
    }

    @Test
    void an_event_without_an_end_has_none_in_the_file() throws Exception {
        String text = textOf(new Event("pick-up", FROM, Optional.empty(), "Pick up", "", STAMP));
        assertFalse(text.contains("DTEND"), text);
        assertEquals("19970714T170000Z", value(readBack(text).get(0), Property.DTSTART));
    }

    /** RFC 5545, 3.8.2.2: the end is later than the start. */
    @Test
    void an_event_that_ends_within_the_second_of_its_start_is_refused() {
        Optional<Instant> end = Optional.of(FROM.plusMillis(999));
        assertThrows(IllegalArgumentException.class, () -> new Event("x", FROM, end, "x", "", STAMP));
    }

    /** RFC 5545, 3.6: a calendar has a component. */
    @Test
    void a_calendar_without_an_event_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> new CalendarFile(List.of()));
    }

    /** The example of RFC 5545, 3.1, drawn out to lines of full length. */
    @Test
    void a_fold_is_a_line_break_and_one_blank_that_reading_takes_away() throws Exception {
        String summary = "a long description ".repeat(20) + "ends";
        String text = textOf(event(summary));
        assertTrue(text.replace("\r\n ", "").contains("SUMMARY:" + summary + "\r\n"), text);
        assertEquals(summary, value(readBack(text).get(0), Property.SUMMARY));
    }

    /** RFC 5545, 3.1: 75 octets a line; the lengths were computed by hand. */
    @ParameterizedTest
    @CsvSource({"75, 75", "76, 75 2", "149, 75 75", "150, 75 75 2"})
    void a_line_is_folded_after_75_octets(int octets, String lengths) {
        String folded = CalendarFile.fold("x".repeat(octets) + "\r\n");
        assertEquals(
                lengths, String.join(" ", octets(folded).map(String::valueOf).toList()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ü", "木", "🚜", "xü", "x木", "xx木", "x🚜", "xx🚜", "xxx🚜"})
    void no_fold_is_inside_a_character(String piece) throws Exception {
        String summary = piece.repeat(90);
        String text = textOf(event(summary));
        assertTrue(octets(text).allMatch(length -> length <= 75), text);
        assertTrue(octets(text).filter(length -> length > 75 - 4).count() > 1, "lines are not filled\n" + text);
        assertEquals(text, new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
        assertEquals(summary, value(readBack(text).get(0), Property.SUMMARY));
    }

    private static Stream<Integer> octets(String text) {
        return Arrays.stream(text.split("\r\n")).map(line -> line.getBytes(StandardCharsets.UTF_8).length);
    }

    /** RFC 5545, 3.3.11; that a colon stays as it is, from memory. */
    @ParameterizedTest
    @MethodSource("escapes")
    void backslash_semicolon_comma_and_line_break_are_escaped_and_a_colon_is_not(String summary, String written) {
        String text = textOf(event(summary));
        assertTrue(text.contains("\r\nSUMMARY:" + written + "\r\n"), text);
    }

    static List<Arguments> escapes() {
        return List.of(
                Arguments.of("a\\b;c,d:e", "a\\\\b\\;c\\,d:e"),
                Arguments.of("a\nb\r\nc\rd", "a\\nb\\nc\\nd"),
                Arguments.of("C:\\new", "C:\\\\new"),
                Arguments.of("a\\\nb", "a\\\\\\nb"));
    }

    @Test
    void a_summary_cannot_end_the_event_or_begin_another() throws Exception {
        String hostile = "x\nEND:VEVENT\nBEGIN:VEVENT\nUID:other";
        List<VEvent> read = readBack(textOf(event(hostile)));
        assertEquals(1, read.size());
        assertEquals(hostile, value(read.get(0), Property.SUMMARY));
        assertEquals("visit-1@shed", value(read.get(0), Property.UID));
    }

    /** RFC 5545, 3.3.11: no control character but the tab. */
    @Test
    void what_no_calendar_can_hold_has_a_stand_in() throws Exception {
        String text = textOf(event("a\u0000b\u001Bc\u007Fd\uD83De\tf\u000Bg"));
        String read = value(readBack(text).get(0), Property.SUMMARY);
        assertEquals("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe\tf\uFFFDg", read);
    }

    @Test
    void another_library_reads_500_hostile_calendars_of_seed_5545_as_they_were() throws Exception {
        Random chance = new Random(5545);
        int events = 0;
        for (int round = 0; round < 500; round++) {
            CalendarFile calendar = strange(chance);
            String text = calendar.text();
            List<Event> read =
                    readBack(text).stream().map(CalendarFileTest::event).toList();
            assertEquals(calendar.events(), read, text);
            assertTrue(octets(text).allMatch(length -> length <= 75), text);
            events += read.size();
        }
        assertTrue(events > 1000, "only " + events + " events");
    }

    private static CalendarFile strange(Random chance) {
        List<Event> events = new ArrayList<>();
        for (int number = chance.nextInt(6); number >= 0; number--) {
            Instant from = Instant.ofEpochSecond(chance.nextInt(2_000_000_000), chance.nextInt(1_000_000_000));
            Optional<Instant> to = Optional.of(from.plusSeconds(1L + chance.nextInt(100_000)));
            events.add(new Event(
                    "visit-" + number + strangeText(chance),
                    from,
                    to.filter(end -> chance.nextBoolean()),
                    strangeText(chance),
                    chance.nextInt(5) == 0 ? "" : strangeText(chance),
                    from.minusSeconds(chance.nextInt(100_000))));
        }
        return new CalendarFile(events);
    }

    /** The reading library drops blanks at either end and misreads a backslash before a line break, so there are none. */
    private static String strangeText(Random chance) {
        return "." + StrangeText.of(chance).replaceAll("\\\\(?=[\\r\\n])", "") + ".";
    }

    private static Event event(VEvent read) {
        return new Event(
                value(read, Property.UID),
                instant(value(read, Property.DTSTART)),
                read.getProperty(Property.DTEND).map(end -> instant(end.getValue())),
                value(read, Property.SUMMARY),
                value(read, Property.DESCRIPTION),
                instant(value(read, Property.DTSTAMP)));
    }

    private static Instant instant(String basic) {
        return Instant.parse(basic.replaceFirst("(....)(..)(..)T(..)(..)(..)Z", "$1-$2-$3T$4:$5:$6Z"));
    }
}
