package org.shedboard.pack.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.shedboard.files.DayFileText;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.ReplanDays;
import org.shedboard.pack.Search;
import org.shedboard.pack.WorkshopDays;
import org.shedboard.pack.search.Packer;

/** Draws days into a folder: folder, machines, first seed, last seed; one fair, one tight, one rich and one replanned day a seed. */
public final class DrawDays {
    private static final int TRIES_BEFORE_THE_DAY = 5000;

    private final Path folder;

    private DrawDays(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        int machines = Integer.parseInt(arguments[1]);
        for (int seed = Integer.parseInt(arguments[2]); seed <= Integer.parseInt(arguments[3]); seed++) {
            new DrawDays(folder).draw(machines, seed);
        }
    }

    private void draw(int machines, int seed) throws IOException {
        Problem fair = WorkshopDays.of(machines, WorkshopDays.FAIR, seed);
        write("fair", machines, seed, fair);
        write("tight", machines, seed, WorkshopDays.of(machines, WorkshopDays.TIGHT, seed));
        write("rich", machines, seed, WorkshopDays.rich(machines, WorkshopDays.FAIR, seed));
        Plan plan = Packer.pack(fair, Search.of(seed, TRIES_BEFORE_THE_DAY));
        ReplanDays.Event event = ReplanDays.Event.values()[seed % ReplanDays.Event.values().length];
        write("replan", machines, seed, ReplanDays.of(fair, plan, event, seed));
    }

    private void write(String kind, int machines, int seed, Problem day) throws IOException {
        String name = String.format(Locale.ROOT, "%s-%02d-%02d.json", kind, machines, seed);
        Files.writeString(folder.resolve(name), DayFileText.write(day));
    }
}
