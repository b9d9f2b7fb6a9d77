package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.pack.Costs;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.fault.Fault;

/** Published shop problems as packing problems; the numbers here are invented. */
class MachineShopFileTest {
    /** Two jobs, three machines: the first goes over machines 2, 0, 1. */
    private static final String JOB_SHOP = "2 3\n2 4 0 5 1 6\n0 7 1 8 2 9\n";

    /** Two jobs, three machines, two and one operations; the second of the first job takes 5 on machine 0, 7 on machine 2. */
    private static final String FLEXIBLE = "2 3\n2 1 1 4 2 0 5 2 7\n1 2 1 6 2 6\n";

    private static Problem read(String text) {
        return MachineShopFile.read(text).expectValue();
    }

    private static Problem.Task task(Problem problem, int job, int operation) {
        return problem.jobs().get(job).stays().get(operation).tasks().get(0);
    }

    private static Set<String> whoCan(Problem problem, Problem.Task task) {
        return problem.people().stream()
                .filter(person -> person.skills().contains(task.skill()))
                .map(Problem.Person::id)
                .collect(Collectors.toSet());
    }

    @Test
    void a_job_shop_is_people_with_a_skill_each_and_stays_without_a_place() {
        Problem shop = read(JOB_SHOP);
        assertEquals(Costs.MAKESPAN_ONLY, shop.costs());
        assertEquals(4 + 5 + 6 + 7 + 8 + 9, shop.horizon());
        assertEquals(List.of(), shop.places());
        assertEquals(
                List.of("M0", "M1", "M2"),
                shop.people().stream().map(Problem.Person::id).toList());
        assertTrue(shop.people().stream().allMatch(person -> person.shifts().equals(List.of(Span.of(0, 39)))));
        assertEquals(
                List.of("J1", "J2"), shop.jobs().stream().map(Problem.Job::id).toList());
        assertEquals(Set.of("M2"), whoCan(shop, task(shop, 0, 0)));
        assertEquals(4, task(shop, 0, 0).handsOn());
        assertEquals(Set.of("M1"), whoCan(shop, task(shop, 1, 1)));
        assertEquals(List.of(), shop.jobs().get(0).stays().get(0).kinds());
        assertEquals(24, PackedPlans.pack(shop, 1, 2000).cost());
    }

    @Test
    void an_operation_of_a_flexible_shop_is_a_skill_of_the_machines_that_can_do_it() {
        Problem shop = read(FLEXIBLE);
        assertEquals(4 + 7 + 6, shop.horizon());
        assertEquals(Set.of("M1"), whoCan(shop, task(shop, 0, 0)));
        assertEquals(Set.of("M0", "M2"), whoCan(shop, task(shop, 0, 1)));
        assertEquals(5, task(shop, 0, 1).minutesBy("M0"));
        assertEquals(7, task(shop, 0, 1).minutesBy("M2"));
        assertEquals(Map.of(), task(shop, 1, 0).handsOnBy());
        assertEquals(9, PackedPlans.pack(shop, 1, 2000).cost());
    }

    @Test
    void line_ends_and_a_third_number_in_the_first_line_mean_nothing() {
        assertEquals(read(JOB_SHOP), read("2 3 2 4 0 5 1 6 0 7 1 8 2 9"));
        assertEquals(read(JOB_SHOP), read("\r\n 2\t3\r\n2 4 0\r\n5 1 6 0 7 1 8 2 9"));
        assertEquals(read(FLEXIBLE), read(FLEXIBLE.replace("2 3\n", "2 3 1.5\n")));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "|line 1 column 1: the file ends where the number of jobs should be",
                "2|line 1 column 1: the file ends where the number of machines should be",
                "x 3|line 1 column 1: is x, not the number of jobs",
                "0 3|line 1 column 1: the number of jobs 0 is not from 1 to 10000",
                "2 99999|line 1 column 3: the number of machines 99999 is not from 1 to 10000",
                "2 3/2 4 0 5 1 6/0 7 1 8 3 9|line 3 column 9: a machine 3 is not from 0 to 2",
                "2 3/2 4 0 5 1 6/0 7 1 -8 2 9|line 3 column 7: is -8, not the minutes",
                "2 3/2 4 0 5 1 6/0 7 1 8.5 2 9|line 3 column 7: is 8.5, not the minutes",
                "2 3/2 4 0 5 1 6/0 7 1 0 2 9|line 3 column 7: the minutes 0 is not from 1 to 10000000",
                "1 2/0 9999999 1 9999999|the file: its operations take 19999998 in all, more than 10000000",
            })
    void the_first_thing_that_is_wrong_is_told_with_its_place(String text, String fault) {
        Reading<Problem> reading = MachineShopFile.read(text == null ? "" : text.replace('/', '\n'));
        assertEquals(
                List.of(fault), reading.faults().stream().map(Fault::toString).toList());
    }

    @Test
    void what_has_the_numbers_of_neither_kind_is_told_what_either_lacks() {
        assertEquals(
                List.of(
                        "line 2 column 7: as a job shop: the file ends where a machine should be",
                        "line 2 column 3: as a flexible job shop: the number of machines that can do it 4 is not from 1 to 3"),
                faults("1 3\n2 4 0 5\n"));
    }

    /** Two jobs over machines 1 and 0, a minute each; or two jobs of one operation, which machine 0 can do in 1. */
    @Test
    void what_has_the_numbers_of_both_kinds_is_refused() {
        String both = "2 2 1 1 0 1 1 1 0 1";
        assertTrue(JobShopFile.read(both).value().isPresent());
        assertTrue(FlexibleShopFile.read(both).value().isPresent());
        assertEquals(List.of("the file: can be read as a job shop and as a flexible one"), faults(both));
    }

    private static List<String> faults(String text) {
        return MachineShopFile.read(text).faults().stream().map(Fault::toString).toList();
    }
}
