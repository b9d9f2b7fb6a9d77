package org.shedboard.files;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Events for a calendar program to open, written as iCalendar by RFC 5545, which knows no calendar without an event. */
public record CalendarFile(List<Event> events) {
    private static final String PRODUCT = "-//Shedboard//Bay board//EN";

    /** RFC 5545, 3.1: a line is no longer than this many octets, its break not counted. */
    private static final int LINE_OCTETS = 75;

    private static final String FOLD = "\r\n ";

    public CalendarFile {
        events = List.copyOf(events);
        if (events.isEmpty()) {
            throw new IllegalArgumentException("a calendar has at least one event");
        }
    }

    /**
     * Something that happens in a calendar, to the second, the finest that iCalendar knows.
     *
     * @param uid the same in every file that tells of this event, and of no other event
     * @param to empty where the event takes no time
     * @param description more than the summary says; may be empty
     * @param changed when what is said of the event was last changed
     */
    public record Event(
            String uid, Instant from, Optional<Instant> to, String summary, String description, Instant changed) {
        /** A text in iCalendar holds no control character but the tab, and a file no half of a character. */
        private static final Pattern UNWRITABLE = Pattern.compile("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F\\p{Cs}]");

        private static final Pattern LINE_BREAK = Pattern.compile("\\r\\n?");

        public Event {
            uid = writable(uid);
            from = from.truncatedTo(ChronoUnit.SECONDS);
            to = to.map(end -> end.truncatedTo(ChronoUnit.SECONDS));
            summary = writable(summary);
            description = writable(description);
            changed = changed.truncatedTo(ChronoUnit.SECONDS);
            if (uid.isBlank()) {
                throw new IllegalArgumentException("an event has an identification of its own");
            }
            if (to.isPresent() && !to.get().isAfter(from)) {
                throw new IllegalArgumentException("an event from %s cannot end at %s".formatted(from, to.get()));
            }
        }

        private static String writable(String text) {
            String lines = LINE_BREAK.matcher(text).replaceAll("\n");
            return UNWRITABLE.matcher(lines).replaceAll("\uFFFD");
        }

        private VEvent entry() {
            VEvent entry = new VEvent();
            entry.setUid(uid);
            entry.setDateTimeStamp(Date.from(changed));
            entry.setDateStart(Date.from(from), true);
            to.ifPresent(end -> entry.setDateEnd(Date.from(end), true));
            entry.setSummary(summary);
            if (!description.isEmpty()) {
                entry.setDescription(description);
            }
            return entry;
        }
    }

    /** The whole calendar, to be stored as UTF-8. */
    public String text() {
        ICalendar calendar = new ICalendar();
        calendar.setProductId(PRODUCT);
        events.forEach(event -> calendar.addEvent(event.entry()));
        StringWriter text = new StringWriter();
        try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
            // the library counts characters where the RFC counts octets
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(calendar);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return fold(text.toString());
    }

    /** Breaks lines that are too long, never inside a character. */
    static String fold(String lines) {
        StringBuilder folded = new StringBuilder();
        int octets = 0;
        for (int character : lines.codePoints().toArray()) {
            boolean lineBreak = character == '\r' || character == '\n';
            if (!lineBreak && octets + octets(character) > LINE_OCTETS) {
                folded.append(FOLD);
                octets = 1;
            }
            folded.appendCodePoint(character);
            octets = lineBreak ? 0 : octets + octets(character);
        }
        return folded.toString();
    }

    /** How long the character is in UTF-8. */
    private static int octets(int character) {
        if (character < 0x80) return 1;
        if (character < 0x800) return 2;
        return character < 0x10000 ? 3 : 4;
    }
}
