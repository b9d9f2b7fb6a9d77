package org.shedboard.testing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A folder of published data with certified results: beside the project, or named by SHEDBOARD_REFERENCE. Without it the test is skipped. */
public final class Reference {
    private Reference() {}

    /** The rows of a file of numbers and names between commas, without its heading. */
    public static List<List<String>> rows(String file) throws IOException {
        Path path = folder().resolve(file);
        assumeTrue(Files.isRegularFile(path), "no file " + file + " in the folder of reference data");
        return Files.readAllLines(path).stream()
                .skip(1)
                .filter(row -> !row.isBlank())
                .map(row -> List.of(row.split(",", -1)))
                .toList();
    }

    private static Path folder() {
        String named = Optional.ofNullable(System.getProperty("SHEDBOARD_REFERENCE"))
                .orElse(Optional.ofNullable(System.getenv("SHEDBOARD_REFERENCE"))
                        .orElse("../shared/reference"));
        Path folder = Path.of(named);
        assumeTrue(
                Files.isDirectory(folder),
                "no folder of reference data at " + named + "; SHEDBOARD_REFERENCE can name one");
        return folder;
    }
}
