package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;
import org.shedboard.pack.fault.Fault;

/** Tables of due dates and of best known costs; the numbers here are invented. */
class ShopTablesTest {
    private static final String DUE = "instance,f10,best_known,reproduced\nours,13,1169,yes\nours,15,,no\n";

    /** Jobs on one machine: the first takes 1 minute, the second 2, and so on. */
    private static Problem shop(int jobs) {
        StringBuilder text = new StringBuilder(jobs + " 1\n");
        IntStream.rangeClosed(1, jobs)
                .forEach(minutes -> text.append("0 ").append(minutes).append('\n'));
        return JobShopFile.read(text.toString()).expectValue();
    }

    @Test
    void due_dates_are_tenths_of_a_jobs_minutes_and_the_first_jobs_weigh_most() {
        TardinessFile.Row row = TardinessFile.read(DUE).expectValue().get(0);
        assertEquals(new TardinessFile.Row("ours", 13, OptionalLong.of(1169)), row);
        Problem problem = row.of(shop(10)).orElseThrow();
        assertEquals(new Costs(1, 0, 0, 0, 0, 0, 0), problem.costs());
        assertEquals(
                List.of(4, 4, 2, 2, 2, 2, 2, 2, 1, 1),
                problem.jobs().stream().map(Problem.Job::weight).toList());
        assertEquals(
                IntStream.of(1, 2, 3, 5, 6, 7, 9, 10, 11, 13)
                        .mapToObj(OptionalInt::of)
                        .toList(),
                problem.jobs().stream().map(Problem.Job::promise).toList());
    }

    @Test
    void of_a_larger_shop_the_first_ten_jobs_count_and_a_smaller_one_is_none() {
        TardinessFile.Row row = TardinessFile.read(DUE).expectValue().get(1);
        assertEquals(OptionalLong.empty(), row.bestKnown());
        assertEquals(
                shop(12).jobs().get(9).id(),
                row.of(shop(12)).orElseThrow().jobs().get(9).id());
        assertEquals(10, row.of(shop(12)).orElseThrow().jobs().size());
        assertEquals(Optional.empty(), row.of(shop(9)));
    }

    @Test
    void what_is_wrong_in_a_table_is_told_with_line_and_column() {
        String text = "instance,f10,best_known\n,13,5\na,x,5\nb,12,-5\nc\n\nd,1001,7\n";
        assertEquals(
                List.of(
                        "line 2, instance: is missing",
                        "line 3, f10: is x, not a whole number",
                        "line 4, best_known: is -5, not a whole number",
                        "line 5, f10: is missing",
                        "line 7, f10: 1001 is not from 0 to 1000"),
                TardinessFile.read(text).faults().stream().map(Fault::toString).toList());
    }

    @Test
    void known_costs_are_found_by_the_name_of_their_column() {
        assertEquals(
                Map.of("a", 7L, "b", 9L),
                KnownCostsFile.read("instance,machines,optimum\na,3,7\nb,4,9\nc,5,\n")
                        .expectValue());
        assertEquals(
                Map.of("a", 6L),
                KnownCostsFile.read("instance,lower_bound,best_known,source\na,5,7,here\na,5,6,there\n")
                        .expectValue());
        assertEquals(
                List.of("line 2, optimum: is many, not a whole number"),
                KnownCostsFile.read("instance,optimum\na,many\n").faults().stream()
                        .map(Fault::toString)
                        .toList());
    }

    @Test
    void the_tables_are_told_apart_by_their_columns() {
        assertTrue(TardinessFile.isOne(DUE));
        assertFalse(KnownCostsFile.isOne(DUE));
        assertTrue(KnownCostsFile.isOne("instance,optimum\n"));
        assertFalse(KnownCostsFile.isOne("instance,objective\n"));
        assertFalse(TardinessFile.isOne(""));
    }
}
