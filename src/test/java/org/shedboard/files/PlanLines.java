package org.shedboard.files;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.shedboard.pack.Plan;
import tools.jackson.databind.json.JsonMapper;

/** Writes a plan file with one line a task or stay: a tenth of the lines of {@link PlanFile#write}, and a change shows in few. */
public final class PlanLines {
    private static final JsonMapper COMPACT = JsonMapper.builder().build();

    private PlanLines() {}

    public static String write(Plan plan) {
        return PlanFile.tree(plan).entrySet().stream()
                .map(PlanLines::entry)
                .collect(Collectors.joining(",\n", "{", "}\n"));
    }

    private static String entry(Map.Entry<String, Object> entry) {
        String value = entry.getValue() instanceof List<?> list && !list.isEmpty()
                ? list.stream().map(COMPACT::writeValueAsString).collect(Collectors.joining(",\n", "[\n", "\n]"))
                : COMPACT.writeValueAsString(entry.getValue());
        return COMPACT.writeValueAsString(entry.getKey()) + ":" + value;
    }
}
