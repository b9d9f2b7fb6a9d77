package org.shedboard.pack.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.shedboard.files.KnownCostsFile;
import org.shedboard.files.MachineShopFile;
import org.shedboard.files.TardinessFile;
import org.shedboard.pack.Problem;

/** A folder of published shops with the best values known of them: {@code NAME.txt} and {@code results.csv}. */
final class ShopFolder {
    private final Path folder;
    private final Map<String, Long> known;

    /** One shop as a packing problem, and the best cost that is known of it. */
    record Shop(String name, Problem problem, long known) {}

    private ShopFolder(Path folder, Map<String, Long> known) {
        this.folder = folder;
        this.known = known;
    }

    static ShopFolder read(Path folder) throws IOException {
        String table = Files.readString(folder.resolve("results.csv"));
        return new ShopFolder(folder, KnownCostsFile.read(table).expectValue());
    }

    /** Those whose names match, by name. */
    List<Shop> matching(String pattern) throws IOException {
        List<Shop> shops = new ArrayList<>();
        for (String name : known.keySet().stream().sorted().toList()) {
            if (name.matches(pattern)) {
                shops.add(new Shop(name, shop(name), known.get(name)));
            }
        }
        return shops;
    }

    private Problem shop(String name) throws IOException {
        return MachineShopFile.read(Files.readString(folder.resolve(name + ".txt")))
                .expectValue();
    }

    /** The shops with due dates of {@code twt.csv} whose best value somebody has found again. */
    List<Shop> reproducedTardiness() throws IOException {
        String text = Files.readString(folder.resolve("twt.csv"));
        List<TardinessFile.Row> rows = TardinessFile.read(text).expectValue();
        List<Boolean> reproduced = reproduced(text);
        List<Shop> shops = new ArrayList<>();
        for (int index = 0; index < rows.size(); index++) {
            TardinessFile.Row row = rows.get(index);
            if (reproduced.get(index)) {
                Problem problem = row.of(shop(row.instance())).orElseThrow();
                String name = row.instance() + " f" + row.tenths();
                shops.add(new Shop(name, problem, row.bestKnown().orElseThrow()));
            }
        }
        return shops;
    }

    /** Row by row, whether the last column says yes. */
    static List<Boolean> reproduced(String text) {
        List<List<String>> cells = text.lines()
                .filter(line -> !line.isBlank())
                .map(line -> Arrays.asList(line.strip().split(",")))
                .toList();
        int column = cells.get(0).indexOf("reproduced");
        return cells.stream().skip(1).map(row -> row.get(column).equals("yes")).toList();
    }
}
