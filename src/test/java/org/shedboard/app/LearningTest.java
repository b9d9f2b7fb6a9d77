package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.day.AsSeen;
import org.shedboard.day.Day;
import org.shedboard.forecast.Experience;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Sort;
import org.shedboard.store.Address;

/** What the demonstration's shop has learned, read from its records. */
class LearningTest {
    private static final LocalDateTime MORNING = LocalDateTime.parse(CommandRoom.MORNING);

    @TempDir
    private Path home;

    private CommandRoom room;

    @BeforeEach
    void copy() throws IOException {
        room = CommandRoom.withDemonstration(home);
    }

    private Workshop open() {
        return Workshop.open(new Address.InHome(Homes.demonstration(home)), "test", Optional.of(MORNING));
    }

    @Test
    void what_was_finished_before_and_today_is_learned_from_and_is_the_same_at_every_terminal() {
        try (Workshop one = open();
                Workshop other = open()) {
            Experience experience = one.day().books().experience();
            List<Lesson> lessons = experience.lessons();
            assertTrue(lessons.size() > 2000, lessons.size() + " lessons");
            assertEquals(
                    MORNING.toLocalDate(),
                    lessons.get(lessons.size() - 1).circumstances().date());
            assertEquals(
                    lessons.size() - experience.learned().aside().size(),
                    List.of(Sort.values()).stream()
                            .mapToInt(experience.learned()::lessonsOf)
                            .sum());
            assertEquals(lessons, other.day().books().experience().lessons());
            Day day = one.day();
            day.visits()
                    .forEach(visit -> assertEquals(
                            day.forecastOf(visit).range(),
                            other.day().forecastOf(visit).range()));
        }
    }

    @Test
    void a_change_that_finishes_nothing_leaves_what_was_learned_as_it_is_and_a_correction_does_not() {
        try (Workshop workshop = open()) {
            AsSeen seen = workshop.seen();
            Experience before = seen.day().books().experience();
            done("take-in", "--class", "quad", "--owner", "Newly Come", "--work", "o", "--mud", "0", "--tag", "20");
            assertTrue(workshop.hasMovedOn(seen));
            assertSame(before, workshop.day().books().experience());
            ClockEntry wrong = onFinishedWork(workshop.day(), "P2");
            String from = LocalTime.ofInstant(wrong.from(), workshop.zone()).toString();
            String to = LocalTime.ofInstant(wrong.from().plusSeconds(60), workshop.zone())
                    .toString();
            done("correct", wrong.id(), "--by", "Tobin", "--time", from + "-" + to, "--why", "was elsewhere");
            Experience after = workshop.day().books().experience();
            assertNotEquals(before.lessons(), after.lessons());
        }
    }

    private static ClockEntry onFinishedWork(Day day, String personId) {
        return day.entries().stream()
                .filter(entry -> entry.personId().equals(personId))
                .filter(entry -> entry.activity() instanceof Activity.OnStay on
                        && day.expectVisit(on.visitId()).finished().isPresent())
                .findFirst()
                .orElseThrow();
    }

    private void done(String... words) {
        CommandRoom.Said said = room.demo(words);
        assertEquals("", said.err());
    }
}
