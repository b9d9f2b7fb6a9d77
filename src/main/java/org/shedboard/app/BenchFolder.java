package org.shedboard.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.app.command.CannotDo;
import org.shedboard.files.DayFile;
import org.shedboard.files.KnownCostsFile;
import org.shedboard.files.MachineShopFile;
import org.shedboard.files.Reading;
import org.shedboard.files.TardinessFile;
import org.shedboard.pack.Problem;
import org.shedboard.pack.fault.Fault;
import org.shedboard.words.Words;

/**
 * The problems of a folder, sorted by name, or of one file: day files ({@code .json}), job shops and flexible ones ({@code .txt}),
 * and tables of due dates for job shops ({@code .csv}). What it does not know it lists with the reason.
 */
final class BenchFolder {
    /** Of a file with many faults; named by itself, it is told whole. */
    private static final int FAULTS_TOLD = 2;

    private final Path folder;
    private final List<Case> cases = new ArrayList<>();
    private final Map<String, String> skipped = new TreeMap<>();
    private final BestKnown known;

    /**
     * One problem, which is read when its turn has come.
     *
     * @param file what is named where it cannot be read
     * @param told what its file says to be the best known cost
     */
    record Case(String name, String file, Supplier<Reading<Problem>> read, Optional<Long> told) {}

    private BenchFolder(Path folder) {
        this.folder = folder;
        this.known = new BestKnown(folder, skipped::put);
    }

    static BenchFolder of(Path folderOrFile) {
        if (!Files.exists(folderOrFile)) {
            throw new CannotDo("command.no_file", folderOrFile);
        }
        boolean isFolder = Files.isDirectory(folderOrFile);
        BenchFolder found = new BenchFolder(
                isFolder ? folderOrFile : folderOrFile.toAbsolutePath().getParent());
        for (Path file : isFolder ? filesOf(folderOrFile) : List.of(folderOrFile)) {
            found.add(file);
        }
        if (!isFolder) {
            found.refuseBadFile();
            filesOf(found.folder).stream().filter(BenchFolder::isTable).forEach(found::addIfKnownCosts);
        }
        return found;
    }

    /** Of a file that was named itself every fault is told. */
    private void refuseBadFile() {
        if (cases.size() == 1) {
            Reading<Problem> reading = cases.get(0).read.get();
            if (reading.value().isEmpty()) {
                throw new BadFile(reading.faults());
            }
        }
    }

    private static List<Path> filesOf(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        } catch (IOException unreadable) {
            throw new CannotDo("command.file_unreadable", folder, unreadable.getMessage());
        }
    }

    List<Case> cases() {
        return cases;
    }

    /** What is not packed, by name, with the reason. */
    Map<String, String> skipped() {
        return skipped;
    }

    void skip(String name, List<Fault> faults) {
        String first = faults.stream().limit(FAULTS_TOLD).map(Fault::toString).collect(Collectors.joining("; "));
        int more = faults.size() - FAULTS_TOLD;
        skipped.put(name, more <= 0 ? first : Words.say("command.bench.first_of", first, more));
    }

    boolean hasKnown() {
        return !known.isEmpty() || cases.stream().anyMatch(one -> one.told.isPresent());
    }

    Optional<Long> knownOf(Case one, Problem problem) {
        return known.of(one.name, problem, one.told);
    }

    private void add(Path file) {
        String name = file.getFileName().toString();
        if (Files.isDirectory(file)) {
            if (!name.equals(BestKnown.PLANS)) {
                skipped.put(name, Words.say("command.bench.folder"));
            }
        } else if (name.endsWith(".json")) {
            cases.add(new Case(stem(name), name, () -> read(file, DayFile::read), Optional.empty()));
        } else if (name.endsWith(".txt")) {
            cases.add(new Case(stem(name), name, () -> read(file, MachineShopFile::read), Optional.empty()));
        } else if (isTable(file)) {
            addTable(file);
        } else {
            skipped.put(name, Words.say("command.bench.unknown"));
        }
    }

    private static boolean isTable(Path file) {
        return file.getFileName().toString().endsWith(".csv");
    }

    private static String stem(String name) {
        return name.substring(0, name.lastIndexOf('.'));
    }

    private void addTable(Path file) {
        String text = text(file);
        if (TardinessFile.isOne(text)) {
            addTardiness(file.getFileName().toString(), TardinessFile.read(text));
        } else if (!addIfKnownCosts(file)) {
            skipped.put(file.getFileName().toString(), Words.say("command.bench.table_unknown"));
        }
    }

    private boolean addIfKnownCosts(Path file) {
        String text = text(file);
        boolean isOne = KnownCostsFile.isOne(text);
        if (isOne) {
            known.addTable(file.getFileName().toString(), text);
        }
        return isOne;
    }

    private void addTardiness(String name, Reading<List<TardinessFile.Row>> rows) {
        if (!rows.faults().isEmpty()) {
            skip(name, rows.faults());
        }
        for (TardinessFile.Row row : rows.value().orElse(List.of())) {
            Optional<Long> told =
                    row.bestKnown().isPresent() ? Optional.of(row.bestKnown().getAsLong()) : Optional.empty();
            String problem = row.instance() + " f" + row.tenths();
            cases.add(new Case(problem, name + " " + problem, () -> readTardiness(row), told));
        }
    }

    private Reading<Problem> readTardiness(TardinessFile.Row row) {
        Path file = folder.resolve(row.instance() + ".txt");
        if (!Files.isRegularFile(file)) {
            return refused(Words.say("command.bench.no_shop", row.instance()));
        }
        Reading<Problem> shop = read(file, MachineShopFile::read);
        if (shop.value().isEmpty()) {
            return shop;
        }
        Optional<Problem> problem = row.of(shop.value().get());
        return problem.isPresent()
                ? new Reading<>(problem, List.of())
                : refused(Words.say("command.bench.few_jobs", row.instance()));
    }

    private static Reading<Problem> refused(String why) {
        return new Reading<>(Optional.empty(), List.of(new Fault("", why)));
    }

    private static Reading<Problem> read(Path file, Function<String, Reading<Problem>> reader) {
        try {
            return reader.apply(text(file));
        } catch (BadFile noText) {
            return new Reading<>(Optional.empty(), noText.faults());
        }
    }

    private static String text(Path file) {
        return Input.text(file, InputStream.nullInputStream());
    }
}
