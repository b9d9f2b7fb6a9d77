package org.shedboard.testing;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.files.DayFile;
import org.shedboard.pack.Problem;

/** A folder of day files, some with proven optima: beside the project, or named by SHEDBOARD_DAYS. Without one the test is skipped. */
public final class Days {
    private Days() {}

    public static Path folder() {
        String named = Optional.ofNullable(System.getProperty("SHEDBOARD_DAYS"))
                .orElse(Optional.ofNullable(System.getenv("SHEDBOARD_DAYS")).orElse("../shared/days"));
        Path folder = Path.of(named);
        assumeTrue(Files.isDirectory(folder), "no folder of days at " + named + "; SHEDBOARD_DAYS can name one");
        return folder;
    }

    /** The proven least cost of days in which nothing has to be left out, by the file's name without its ending. */
    public static Map<String, Long> optima() throws IOException {
        Map<String, Long> optima = new LinkedHashMap<>();
        List<String> rows = Files.readAllLines(folder().resolve("optimum.csv"));
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",");
            optima.put(cells[0], Long.parseLong(cells[3].strip()));
        }
        assertTrue(optima.size() >= 10, "too few days to mean anything");
        return optima;
    }

    public static Problem read(String name) throws IOException {
        return DayFile.read(Files.readString(folder().resolve(name + ".json"))).expectValue();
    }
}
