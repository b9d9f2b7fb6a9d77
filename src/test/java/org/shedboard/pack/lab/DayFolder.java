package org.shedboard.pack.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shedboard.files.DayFile;
import org.shedboard.files.KnownCostsFile;
import org.shedboard.pack.Problem;

/** A folder of day files, some of which have a proven optimum in its table {@code optimum.csv}. */
final class DayFolder {
    /** The engine was tuned on the others. */
    private static final String TO_JUDGE_ON = ".*-0[23]";

    private static final String ENDING = ".json";

    private final Path folder;
    private final Map<String, Long> optima = new LinkedHashMap<>();
    private final List<Day> days = new ArrayList<>();

    /** One day file, by its name without the ending. */
    record Day(String name, Problem problem) {
        int machines() {
            return problem.jobs().size();
        }

        /** Two of the same length are told apart by their names. */
        private static final Comparator<Day> FEWEST_FIRST =
                Comparator.comparingInt(Day::machines).thenComparing(Day::name);
    }

    private DayFolder(Path folder) {
        this.folder = folder;
    }

    static DayFolder read(Path folder) throws IOException {
        DayFolder all = new DayFolder(folder);
        Path table = folder.resolve("optimum.csv");
        if (Files.exists(table)) {
            all.optima.putAll(KnownCostsFile.read(Files.readString(table)).expectValue());
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(each -> each.toString().endsWith(ENDING))
                    .sorted()
                    .toList()) {
                String name = file.getFileName().toString().replaceAll("\\.json$", "");
                all.days.add(new Day(name, DayFile.read(Files.readString(file)).expectValue()));
            }
        }
        return all;
    }

    Path fileOf(Day day) {
        return folder.resolve(day.name() + ENDING);
    }

    List<Day> proven() {
        return days.stream().filter(day -> optima.containsKey(day.name())).toList();
    }

    long optimumOf(Day day) {
        return optima.get(day.name());
    }

    List<Day> unproven() {
        return days.stream().filter(day -> !optima.containsKey(day.name())).toList();
    }

    /** Days to judge the engine on, those with the fewest machines first. */
    List<Day> judged() {
        return unproven().stream()
                .filter(day -> day.name().matches(TO_JUDGE_ON))
                .sorted(Day.FEWEST_FIRST)
                .toList();
    }

    /** The days to judge on with so many machines. */
    List<Day> judged(int least, int most) {
        return judged().stream()
                .filter(day -> least <= day.machines() && day.machines() <= most)
                .toList();
    }

    /** Of the days to judge on, the one whose machines come nearest to so many. */
    Day nearest(int machines) {
        return judged().stream()
                .min(Comparator.comparingInt(day -> Math.abs(day.machines() - machines)))
                .orElseThrow(() -> new IllegalArgumentException("no day to judge on in " + folder));
    }

    /** At most so many of a list, spread over all of it, the first and the last among them. */
    static <T> List<T> evenly(List<T> all, int most) {
        if (most >= all.size()) {
            return all;
        }
        return IntStream.range(0, most)
                .mapToObj(index -> all.get(most == 1 ? 0 : index * (all.size() - 1) / (most - 1)))
                .toList();
    }
}
