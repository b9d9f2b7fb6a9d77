package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.files.DayFileText;
import org.shedboard.pack.WorkshopDays;

class DayFolderTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void draws_days() throws IOException {
        write("fair-01", 3);
        write("fair-02", 5);
        write("fair-03", 2);
        write("fair-12", 4);
        write("small-03", 3);
        Files.writeString(folder.resolve("optimum.csv"), "instance,machines,tasks,optimum\nsmall-03,3,20,1234\n");
    }

    @Test
    void the_engine_is_judged_on_the_days_02_and_03_without_an_optimum_the_shortest_first() throws IOException {
        DayFolder days = DayFolder.read(folder);
        assertEquals(List.of("fair-03", "fair-02"), names(days.judged()));
        assertEquals(List.of("fair-02"), names(days.judged(3, 9)));
        assertEquals("fair-03", days.nearest(0).name());
    }

    @Test
    void a_proven_day_comes_with_its_optimum() throws IOException {
        DayFolder days = DayFolder.read(folder);
        assertEquals(List.of("small-03"), names(days.proven()));
        assertEquals(1234, days.optimumOf(days.proven().get(0)));
        assertEquals(4, days.unproven().size());
    }

    @Test
    void some_of_many_are_spread_from_the_first_to_the_last() {
        List<Integer> all = List.of(0, 1, 2, 3, 4, 5, 6);
        assertEquals(List.of(0, 3, 6), DayFolder.evenly(all, 3));
        assertEquals(List.of(0), DayFolder.evenly(all, 1));
        assertEquals(all, DayFolder.evenly(all, 7));
        assertEquals(all, DayFolder.evenly(all, 8));
        assertEquals(List.of(), DayFolder.evenly(all, 0));
    }

    private void write(String name, int machines) throws IOException {
        String text = DayFileText.write(WorkshopDays.of(machines, 9, 1));
        Files.writeString(folder.resolve(name + ".json"), text);
    }

    private static List<String> names(List<DayFolder.Day> days) {
        return days.stream().map(DayFolder.Day::name).toList();
    }
}
