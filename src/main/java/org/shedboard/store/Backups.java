package org.shedboard.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.disk.OwnersEyes;

/**
 * The backups in one directory. All of the newest fourteen days that have any are kept, and the last one of each of the newest twelve
 * months; days without any do not count, so that a clock that is years ahead costs nothing but the oldest.
 */
public final class Backups {
    private static final Pattern NAME = Pattern.compile("shop-(\\d{4}-\\d{2}-\\d{2})-\\d{6}\\.zip");
    private static final int DAYS = 14;
    private static final int MONTHS = 12;

    private final Path directory;

    private Backups(Path directory) {
        this.directory = directory;
    }

    public static Backups in(Path directory) {
        return new Backups(directory);
    }

    /** All that carry our name, the newest first. */
    public List<Path> all() {
        if (!Files.isDirectory(directory)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(directory)) {
            return files.filter(file -> NAME.matcher(name(file)).matches())
                    .sorted(Comparator.comparing(Backups::name).reversed())
                    .toList();
        } catch (IOException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** The day of the newest one. */
    public Optional<LocalDate> newestDate() {
        return all().stream().findFirst().map(Backups::date);
    }

    boolean has(LocalDate day) {
        return all().stream().anyMatch(file -> date(file).equals(day));
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    private static LocalDate date(Path file) {
        Matcher name = NAME.matcher(name(file));
        if (!name.matches()) {
            throw new IllegalArgumentException(file + " is no backup");
        }
        return LocalDate.parse(name.group(1));
    }

    /** What need not be kept of these, which are in order, the newest first. */
    static List<Path> superfluous(List<Path> newestFirst) {
        Set<LocalDate> days =
                newestFirst.stream().map(Backups::date).distinct().limit(DAYS).collect(Collectors.toSet());
        Set<YearMonth> months = newestFirst.stream()
                .map(file -> YearMonth.from(date(file)))
                .distinct()
                .limit(MONTHS)
                .collect(Collectors.toSet());
        List<Path> gone = new ArrayList<>();
        for (Path file : newestFirst) {
            // the first one met of a month is its last
            boolean isOfMonth = months.remove(YearMonth.from(date(file)));
            if (!isOfMonth && !days.contains(date(file))) {
                gone.add(file);
            }
        }
        return gone;
    }

    /** Takes away what need not be kept, and returns the oldest of the days that are kept whole. */
    Optional<LocalDate> thinOut() {
        List<Path> all = all();
        for (Path file : superfluous(all)) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException problem) {
                throw StoreFailure.from(problem);
            }
        }
        return all.stream().map(Backups::date).distinct().limit(DAYS).reduce((one, older) -> older);
    }

    /** Copies a backup into this directory, which has to be there: a disk that is not there must not be taken for one that is. */
    void take(Path backup) {
        if (!Files.isDirectory(directory)) {
            throw new StoreFailure(
                    StoreFailure.Kind.NO_SECOND_PLACE,
                    "the second place for backups, %s, is not there; bring its disk back, or name another: shedboard backup --also-to DIR"
                            .formatted(directory));
        }
        Path whole = directory.resolve(name(backup));
        Path part = directory.resolve(name(backup) + ".part");
        try {
            Files.deleteIfExists(part);
            Files.createFile(part, OwnersEyes.ofFile());
            Files.copy(backup, part, StandardCopyOption.REPLACE_EXISTING);
            Arrival.force(part);
            if (Files.mismatch(backup, part) >= 0) {
                throw new StoreFailure(
                        StoreFailure.Kind.DISK_FAILS,
                        "what was copied to %s is not what was written; look at that disk".formatted(directory));
            }
            Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE);
            Arrival.force(directory);
        } catch (IOException problem) {
            throw StoreFailure.from(problem);
        } finally {
            part.toFile().delete();
        }
    }
}
