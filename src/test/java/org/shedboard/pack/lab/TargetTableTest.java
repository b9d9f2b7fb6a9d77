package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class TargetTableTest {
    @Test
    void the_table_stands_first_and_the_rows_behind_each_line_below_it() {
        TargetTable table = new TargetTable();
        table.add(new TargetTable.Line(
                "few", "few machines", "≤ 2 %", Reached.of(Verdict.MET, "%.1f %%", 1.25), List.of("a", "b")));
        table.add(new TargetTable.Line("memory", "memory", "flat", Reached.nothing("no day"), List.of()));
        assertEquals(
                List.of(
                        "| what | target | reached | met? |",
                        "|---|---|---|---|",
                        "| few machines | ≤ 2 % | 1.3 % | yes |",
                        "| memory | flat | no day | - |",
                        "",
                        "few: few machines",
                        "    a",
                        "    b",
                        "",
                        "memory: memory"),
                table.text());
    }
}
