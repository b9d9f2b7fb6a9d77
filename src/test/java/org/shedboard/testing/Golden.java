package org.shedboard.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.shedboard.grid.Grid;
import org.shedboard.grid.TextWidth;

/**
 * Screens as they once were looked at and accepted, {@code golden/<screen>/<case>.txt}: a test compares what is drawn
 * now. {@code -Dgolden.update=true} writes them anew, but not where CI=true: first look, then accept.
 */
public final class Golden {
    private static final Golden STORED = new Golden(
            Path.of("src", "test", "resources", "golden"),
            Boolean.getBoolean("golden.update"),
            "true".equals(System.getenv("CI")));

    private final Path folder;
    private final boolean update;
    private final boolean unattended;

    Golden(Path folder, boolean update, boolean unattended) {
        this.folder = folder;
        this.update = update;
        this.unattended = unattended;
    }

    /** Fails unless the grid is just as the stored one. */
    public static void check(String screen, String name, Grid grid) {
        STORED.compare(screen, name, grid);
    }

    /** Fails unless the screen has exactly one stored file for each of these cases. */
    public static void checkCases(String screen, Collection<String> cases) {
        STORED.compareCases(screen, cases);
    }

    /** Fails unless these are all the screens that have stored cases. */
    public static void checkScreens(Collection<String> screens) {
        assertEquals(new TreeSet<>(screens), STORED.names(STORED.folder), "screens in " + STORED.folder);
    }

    void compare(String screen, String name, Grid grid) {
        Path file = folder.resolve(screen).resolve(name + ".txt");
        if (update) write(file, grid.framed());
        String expected = read(file, grid.framed());
        if (!expected.equals(grid.framed())) fail(difference(screen + "/" + name, expected, grid.framed()));
    }

    void compareCases(String screen, Collection<String> cases) {
        Set<String> files = new TreeSet<>();
        for (String file : names(folder.resolve(screen))) files.add(file.replaceFirst("[.]txt$", ""));
        assertEquals(new TreeSet<>(cases), files, "cases in " + folder.resolve(screen));
    }

    private Set<String> names(Path parent) {
        if (!Files.isDirectory(parent)) return Set.of();
        try (Stream<Path> children = Files.list(parent)) {
            Set<String> names = new TreeSet<>();
            children.forEach(child -> names.add(child.getFileName().toString()));
            return names;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private void write(Path file, String framed) {
        if (unattended) fail("golden.update is refused where CI=true: a person has to look at the screens");
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, framed);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static String read(Path file, String actual) {
        if (!Files.exists(file)) {
            fail("there is no " + file + "; run with -Dgolden.update=true, look at it, then accept it. Drawn is\n"
                    + actual);
        }
        try {
            return Files.readString(file);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static String difference(String name, String expected, String actual) {
        String[] before = expected.split("\n", -1);
        String[] now = actual.split("\n", -1);
        int line = 0;
        while (line < before.length && line < now.length && before[line].equals(now[line])) line++;
        String was = line < before.length ? before[line] : "";
        String is = line < now.length ? now[line] : "";
        return String.format(
                Locale.ROOT, """
                the screen %s differs from line %d on (update with -Dgolden.update=true once you have looked)
                stored: %s
                drawn:  %s
                        %s^
                stored screen
                %s
                drawn screen
                %s""", name, line + 1, was, is, " ".repeat(columnsAlike(was, is)), expected, actual);
    }

    private static int columnsAlike(String one, String other) {
        int length = 0;
        while (length < one.length() && length < other.length() && one.charAt(length) == other.charAt(length)) length++;
        return TextWidth.of(one.substring(0, length));
    }
}
