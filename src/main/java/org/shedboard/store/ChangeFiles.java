package org.shedboard.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * The days' files of changes in a home, one {@link ChangeLine} a line: {@code changes/2026-11-27.jsonl}. Together with a backup they give
 * back what was done since.
 */
final class ChangeFiles {
    private static final String ENDING = ".jsonl";
    /** A whole line that is longer is none of ours. */
    private static final int LONGEST_LINE = 200_000_000;

    private final Home home;

    ChangeFiles(Home home) {
        this.home = home;
    }

    private Path directory() {
        return home.changes();
    }

    Path of(LocalDate date) {
        return directory().resolve(date + ENDING);
    }

    /** All there are, the oldest day first. */
    List<Path> files() {
        if (!Files.isDirectory(directory())) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(directory())) {
            return all.filter(file -> file.getFileName().toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }

    /** What is in them after this change, in order; a line that is not as it was written ends what can be followed. */
    List<ChangeLine> after(long id) {
        TreeMap<Long, ChangeLine> lines = new TreeMap<>();
        files().forEach(file -> each(
                file,
                line -> ChangeLine.parse(line)
                        .filter(each -> each.id() > id)
                        .ifPresent(each -> lines.put(each.id(), each))));
        return List.copyOf(lines.values());
    }

    /** That change, where it is in them. */
    Optional<ChangeLine> find(long id) {
        List<ChangeLine> found = new ArrayList<>();
        files().forEach(file -> each(
                file,
                line -> ChangeLine.parse(line).filter(each -> each.id() == id).ifPresent(found::add)));
        return found.stream().findFirst();
    }

    private static void each(Path file, Consumer<String> work) {
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
            // read as bytes, so that a damaged letter spoils its own line only
            lines.lines()
                    .map(line -> new String(line.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8))
                    .forEach(work);
        } catch (IOException problem) {
            throw Home.unusable(problem);
        } catch (UncheckedIOException problem) {
            throw Home.unusable(problem.getCause());
        }
    }

    /** The newest change in them, after what a power cut left of a line at the end of a file is taken away. */
    Optional<ChangeLine> newest() {
        Optional<ChangeLine> newest = Optional.empty();
        for (Path file : files()) {
            Optional<ChangeLine> last = lastOf(file);
            if (last.isPresent()
                    && newest.map(ChangeLine::id).orElse(0L) < last.get().id()) {
                newest = last;
            }
        }
        return newest;
    }

    private static Optional<ChangeLine> lastOf(Path file) {
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
            long end = open.length();
            while (end > 0) {
                long begin = beginOfLine(open, end);
                Optional<ChangeLine> line = lineIn(open, begin, end);
                if (line.isPresent()) {
                    open.setLength(end);
                    return line;
                }
                end = begin;
            }
            return Optional.empty();
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }

    /** A line counts with its line feed only: without it, nobody was told that it is there. */
    private static Optional<ChangeLine> lineIn(RandomAccessFile open, long begin, long end) throws IOException {
        if (end - begin > LONGEST_LINE) {
            return Optional.empty();
        }
        byte[] bytes = new byte[(int) (end - begin)];
        open.seek(begin);
        open.readFully(bytes);
        return bytes.length > 0 && bytes[bytes.length - 1] == '\n'
                ? ChangeLine.parse(new String(bytes, 0, bytes.length - 1, StandardCharsets.UTF_8))
                : Optional.empty();
    }

    /** Where the line begins whose last byte, a line feed perhaps, is the one before {@code end}. */
    private static long beginOfLine(RandomAccessFile open, long end) throws IOException {
        byte[] block = new byte[8192];
        long to = end - 1;
        while (to > 0) {
            int length = (int) Math.min(block.length, to);
            open.seek(to - length);
            open.readFully(block, 0, length);
            for (int i = length - 1; i >= 0; i--) {
                if (block[i] == '\n') {
                    return to - length + i + 1;
                }
            }
            to -= length;
        }
        return 0;
    }

    /** Puts all of them aside, since they belong to other records than these; nothing is thrown away. */
    void setAside() {
        setAside("changes-of-other-records");
    }

    /** Under that name, or that and the first number that is free. */
    void setAside(String name) {
        Path aside = home.directory().resolve(name);
        for (int i = 2; Files.exists(aside); i++) {
            aside = home.directory().resolve(name + "-" + i);
        }
        try {
            if (Files.exists(directory())) {
                Files.move(directory(), aside);
            }
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }

    /** Takes away those of days before this one. */
    void dropBefore(LocalDate date) {
        files().stream().filter(file -> file.compareTo(of(date)) < 0).forEach(ChangeFiles::delete);
    }

    void dropAll() {
        files().forEach(ChangeFiles::delete);
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }

    /** In whose days the files are counted: the shop's, or the machine's where there is no shop yet. */
    static ZoneId zone(Sql sql) {
        return sql.select(Table.named("shop").text("zone").keyed("zone"), "").stream()
                .map(row -> ZoneId.of(row.text("zone")))
                .findFirst()
                .orElse(ZoneId.systemDefault());
    }
}
