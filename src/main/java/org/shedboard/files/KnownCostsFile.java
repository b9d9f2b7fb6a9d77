package org.shedboard.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** A table of the best cost that anybody knows of each problem: columns {@code instance} and {@code optimum} or {@code best_known}. */
public final class KnownCostsFile {
    private static final List<String> COLUMNS = List.of("optimum", "best_known");

    private KnownCostsFile() {}

    /** Whether the text has those columns. */
    public static boolean isOne(String text) {
        CsvText table = CsvText.of(text);
        return table.has("instance") && COLUMNS.stream().anyMatch(table::has) && !TardinessFile.isOne(text);
    }

    /** The cost of each problem by its name; one without a cost is left out, of two costs the lower counts. */
    public static Reading<Map<String, Long>> read(String text) {
        CsvText table = CsvText.of(text);
        Map<String, Long> known = new LinkedHashMap<>();
        for (CsvText.Row row : table.rows()) {
            Optional<String> name = row.expect("instance");
            for (String column : COLUMNS) {
                OptionalLong cost = row.findWhole(column);
                if (name.isPresent() && cost.isPresent()) {
                    known.merge(name.get(), cost.getAsLong(), Math::min);
                }
            }
        }
        return new Reading<>(table.faults().isEmpty() ? Optional.of(known) : Optional.empty(), table.faults());
    }
}
