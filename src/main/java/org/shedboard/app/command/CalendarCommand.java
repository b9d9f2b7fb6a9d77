package org.shedboard.app.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Day;
import org.shedboard.files.CalendarFile;
import org.shedboard.files.CalendarFile.Event;
import org.shedboard.files.VisitCalendar;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** What was promised and what is expected, for a calendar. */
@Command(name = "calendar")
final class CalendarCommand implements Wish.OnTheDay {
    @Option(names = "--from", paramLabel = "DATE")
    private Optional<LocalDate> from;

    @Option(names = "--to", paramLabel = "DATE")
    private Optional<LocalDate> to;

    @ParentCommand
    private Root root;

    @Override
    public Reply reply(Seen seen) {
        if (from.isPresent() && to.filter(from.get()::isAfter).isPresent()) {
            throw new WrongUse("command.tally.backwards", from.get(), to.get());
        }
        Day day = seen.day();
        List<Event> events = VisitCalendar.of(day, seen.now()).stream()
                .filter(event -> isWithin(LocalDate.ofInstant(event.from(), day.zone())))
                .toList();
        if (events.isEmpty()) {
            throw new CannotDo("command.calendar.empty");
        }
        return root.globals().json()
                ? new Reply.Tell(new Answer(List.of(), tree(day, events)))
                : new Reply.Print(new CalendarFile(events).text());
    }

    private boolean isWithin(LocalDate date) {
        return from.filter(date::isBefore).isEmpty() && to.filter(date::isAfter).isEmpty();
    }

    private static Map<String, Object> tree(Day day, List<Event> events) {
        return new Tree()
                .put("events", events.stream().map(event -> event(day, event)).toList())
                .fields();
    }

    private static Map<String, Object> event(Day day, Event event) {
        return new Tree()
                .put("uid", event.uid())
                .put("from", Tree.time(day, event.from()))
                .put("to", event.to().map(to -> Tree.time(day, to)))
                .put("summary", event.summary())
                .put("description", event.description())
                .put("changed", Tree.time(day, event.changed()))
                .fields();
    }
}
