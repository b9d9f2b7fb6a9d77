package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.StreamSupport;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** Promises and bookings of the demonstration as a calendar, read back by another library. */
class CalendarCommandTest {
    private static final ZoneId ZONE = ZoneId.of("Australia/Sydney");
    private static final DateTimeFormatter UTC = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmssX");

    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    private List<VEvent> events(String... words) throws Exception {
        Said said = room.demo(words);
        assertEquals("", said.err());
        Calendar calendar = new CalendarBuilder().build(new StringReader(said.out()));
        assertFalse(calendar.validate().hasErrors(), said.out());
        return calendar.getComponents(Component.VEVENT);
    }

    private static String value(VEvent event, String property) {
        return event.getProperty(property).map(Property::getValue).orElse("");
    }

    private static VEvent only(List<VEvent> events, String uid) {
        List<VEvent> those = events.stream()
                .filter(event -> value(event, Property.UID).equals(uid))
                .toList();
        assertEquals(1, those.size(), events.toString());
        return those.get(0);
    }

    /** In the shop's zone, as the calendar has it in UTC. */
    private static String utc(String local) {
        return UTC.format(LocalDateTime.parse(local).atZone(ZONE).withZoneSameInstant(ZoneOffset.UTC));
    }

    private static Instant moment(VEvent event, String property) {
        return OffsetDateTime.parse(value(event, property), UTC).toInstant();
    }

    private String visit(String tag) {
        JsonNode day = room.demo("tally", "--json").json();
        return StreamSupport.stream(day.get("visits").spliterator(), false)
                .filter(visit -> visit.get("name").asString().startsWith(tag + " ("))
                .findFirst()
                .orElseThrow()
                .get("visit")
                .asString();
    }

    @Test
    void a_promise_is_an_event_at_the_promised_moment_that_says_when_it_was_said() throws Exception {
        room.demo("promise", "7", "--say", "15:20", "--to", "Quillgate, 0000 000 999", "--why", "a boot is split");
        VEvent ready = only(events("calendar"), visit("7") + "-promise@shedboard");
        assertEquals(utc("2026-05-12T15:20:00"), value(ready, Property.DTSTART));
        assertEquals(utc("2026-05-12T15:35:00"), value(ready, Property.DTEND));
        assertEquals("Ready: tag 7, Quillgate, Nettle Flat", value(ready, Property.SUMMARY));
        assertEquals("Wexlund Trudge 700: Full service. Told by Marnie.", value(ready, Property.DESCRIPTION));
        Duration since = Duration.between(
                LocalDateTime.parse(CommandRoom.MORNING).atZone(ZONE).toInstant(), moment(ready, Property.DTSTAMP));
        assertTrue(!since.isNegative() && since.toMinutes() < 2, since.toString());
    }

    @Test
    void a_changed_promise_is_the_same_event_at_another_time() throws Exception {
        room.demo("promise", "7", "--say", "15:20", "--to", "Quillgate", "--why", "x");
        List<String> before = uids(events("calendar"));
        room.demo("promise", "7", "--say", "16:10", "--to", "Quillgate", "--why", "y");
        List<VEvent> after = events("calendar");
        assertEquals(
                before.stream().sorted().toList(), uids(after).stream().sorted().toList());
        VEvent ready = only(after, visit("7") + "-promise@shedboard");
        assertEquals(utc("2026-05-12T16:10:00"), value(ready, Property.DTSTART));
    }

    private static List<String> uids(List<VEvent> events) {
        return events.stream().map(event -> value(event, Property.UID)).toList();
    }

    @Test
    void a_booking_is_an_event_when_it_is_expected_and_not_any_more_when_it_has_come() throws Exception {
        Said booked = room.demo(
                "take-in", "--machine", "M23", "--work", "minor-quad", "--mud", "1", "--expected", "wed 9:15");
        assertEquals("", booked.err());
        List<VEvent> events = events("calendar", "--from", "2026-05-13", "--to", "2026-05-13");
        VEvent comes = events.stream()
                .filter(event -> value(event, Property.SUMMARY).contains("Inkpenny"))
                .findFirst()
                .orElseThrow();
        assertTrue(value(comes, Property.UID).matches("V\\d+-arrival@shedboard"), comes.toString());
        assertEquals("Comes: Inkpenny, Dry Gully", value(comes, Property.SUMMARY));
        assertEquals(utc("2026-05-13T09:15:00"), value(comes, Property.DTSTART));
        assertEquals("", room.demo("arrive", "Inkpenny").err());
        assertFalse(room.demo("calendar").out().contains(value(comes, Property.UID)));
    }

    @Test
    void the_days_that_are_named_cut_it_to_the_events_that_begin_in_them() throws Exception {
        List<VEvent> all = events("calendar");
        List<VEvent> today = events("calendar", "--from", "2026-05-12", "--to", "2026-05-12");
        assertTrue(!today.isEmpty() && today.size() < all.size(), today.size() + " of " + all.size());
        assertEquals(
                all.stream()
                        .filter(event -> moment(event, Property.DTSTART)
                                .atZone(ZONE)
                                .toLocalDate()
                                .toString()
                                .equals("2026-05-12"))
                        .map(event -> value(event, Property.UID))
                        .toList(),
                uids(today));
    }

    @Test
    void what_is_finished_is_not_promised_any_more() throws Exception {
        String done = visit("5");
        assertTrue(uids(events("calendar")).stream().noneMatch(uid -> uid.startsWith(done + "-")));
    }

    @Test
    void no_telephone_number_is_told() {
        room.demo("promise", "7", "--say", "15:20", "--to", "Quillgate, 0000 000 999", "--why", "ring 0000 000 888");
        String text = room.demo("calendar").out().replace("\r\n ", "");
        assertTrue(text.contains("Quillgate"), text);
        assertFalse(text.contains("0000 000"), text);
    }

    @Test
    void the_same_is_told_as_json() throws Exception {
        List<VEvent> events = events("calendar");
        JsonNode told = room.demo("calendar", "--json").json().get("events");
        assertEquals(events.size(), told.size());
        for (int i = 0; i < events.size(); i++) {
            assertEquals(
                    value(events.get(i), Property.UID), told.get(i).get("uid").asString());
            assertEquals(
                    value(events.get(i), Property.SUMMARY),
                    told.get(i).get("summary").asString());
            assertEquals(
                    moment(events.get(i), Property.DTSTART),
                    OffsetDateTime.parse(told.get(i).get("from").asString()).toInstant());
        }
    }

    @Test
    void nothing_to_tell_is_a_sentence_and_no_calendar() {
        Said said = room.demo("calendar", "--from", "2031-01-01");
        assertEquals(1, said.status());
        assertEquals("", said.out());
        assertEquals("Nothing is promised and nothing booked for then.\n", said.err());
    }

    @Test
    void days_that_run_backwards_are_refused() {
        Said said = room.demo("calendar", "--from", "2026-05-13", "--to", "2026-05-12");
        assertEquals(2, said.status());
        assertEquals("2026-05-13 is after 2026-05-12.", said.complaints().get(0));
    }
}
