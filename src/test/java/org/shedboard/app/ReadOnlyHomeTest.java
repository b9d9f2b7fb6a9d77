package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program on a home in which nothing may be written, as somebody whom that keeps from writing: whoever may do anything becomes nobody. */
@Tag("e2e")
class ReadOnlyHomeTest {
    private static final Path BECOMING_NOBODY = Path.of("/usr/bin/setpriv");
    private static final List<String> NOBODY =
            List.of(BECOMING_NOBODY.toString(), "--reuid=65534", "--regid=65534", "--clear-groups");

    @TempDir
    private Path directory;

    private Path home;
    private Path jar;
    private boolean isAnybody;

    @BeforeEach
    void prepare() throws IOException {
        isAnybody = "root".equals(System.getProperty("user.name"));
        assumeTrue(!isAnybody || Files.isExecutable(BECOMING_NOBODY), "skipped: nobody else to be");
        home = directory.resolve("home");
        jar = Files.copy(Path.of(System.getProperty("shedboard.jar")), directory.resolve("shedboard.jar"));
        assertEquals(0, run(List.of(), "day").status());
        permit("r-xr-xr-x", "r--r--r--");
    }

    @AfterEach
    void tidyUp() throws IOException {
        permit("rwxr-xr-x", "rw-r--r--");
    }

    private void permit(String ofDirectories, String ofFiles) throws IOException {
        try (Stream<Path> all = Files.walk(directory)) {
            for (Path each : all.toList()) {
                boolean isTop = each.equals(directory);
                String permissions = isTop ? "rwxr-xr-x" : Files.isDirectory(each) ? ofDirectories : ofFiles;
                Files.setPosixFilePermissions(each, PosixFilePermissions.fromString(permissions));
            }
        }
    }

    private record Said(int status, String out, String err) {}

    private Said asOthers(String... words) throws IOException {
        return run(isAnybody ? NOBODY : List.of(), words);
    }

    private Said run(List<String> as, String... words) throws IOException {
        List<String> command = new ArrayList<>(as);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        command.addAll(List.of(java, "-XX:TieredStopAtLevel=1", "-jar", jar.toString(), "--home", home.toString()));
        command.add("--demo");
        command.addAll(Arrays.asList(words));
        Path out = directory.resolve("out");
        Path err = directory.resolve("err");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        try {
            return new Said(
                    process.waitFor(),
                    Files.readString(out, StandardCharsets.UTF_8),
                    Files.readString(err, StandardCharsets.UTF_8));
        } catch (InterruptedException stopped) {
            throw new IOException(stopped);
        }
    }

    private Map<String, Long> files() throws IOException {
        Map<String, Long> sizes = new TreeMap<>();
        try (Stream<Path> all = Files.walk(home)) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                sizes.put(home.relativize(each).toString(), Files.size(each));
            }
        }
        return sizes;
    }

    @Test
    void a_change_is_refused_with_one_line_and_goes_through_once_it_may_be_written() throws IOException {
        Map<String, Long> before = files();
        String[] promise = {"promise", "7", "--say", "4:07p", "--to", "Quillgate", "--why", "parts"};
        Said refused = asOthers(promise);
        assertEquals(1, refused.status());
        assertEquals("", refused.out());
        assertEquals(1, refused.err().lines().count(), refused.err());
        assertTrue(refused.err().contains("make its disk writable, or start as its owner"), refused.err());
        assertEquals(before, files());
        permit("rwxrwxrwx", "rw-rw-rw-");
        Said done = run(List.of(), promise);
        assertEquals(0, done.status(), done.err());
    }

    @Test
    void doctor_says_what_to_do() throws IOException {
        Said said = asOthers("doctor");
        assertEquals(1, said.status());
        assertTrue(said.out().contains("make its disk writable, or start as its owner"), said.out());
        assertTrue(said.out().contains("Look at the disk first"), said.out());
    }
}
