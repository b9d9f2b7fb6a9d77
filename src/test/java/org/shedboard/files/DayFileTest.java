package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Fault;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

class DayFileTest {
    /** One of everything; all numbers are invented. Single quotes stand for double ones. */
    private static final String FULL = """
            {'now':20, 'horizon':4320, 'origin':'2026-03-02T07:00+10:00[Australia/Brisbane]',
             'costs':{'late':90, 'makespan':2},
             'places':[{'id':'H1', 'kind':'hoist', 'ratedKg':2500, 'closed':[[300,360]]}, {'id':'F1', 'kind':'floor'}],
             'people':[{'id':'P1', 'skills':['wash','service'], 'shifts':[[0,180],[195,300]], 'overtime':[[540,660]],
                        'sharedSpread':0.1},
                       {'id':'P2', 'skills':['service'], 'shifts':[[0,300]]}],
             'jobs':[{'id':'J1', 'weight':2, 'massKg':720, 'arrives':30, 'promise':540, 'sharedSpread':0.2,
               'stays':[{'places':['hoist'], 'place':'H1',
                 'tasks':[{'id':'up', 'skill':'service', 'handsOn':8, 'done':{'person':'P1','from':2,'end':10}},
                          {'id':'drain', 'skill':'service', 'handsOn':8, 'unattended':20, 'after':['up'],
                           'handsOnBy':{'P2':11}, 'people':1, 'notBy':['fit'], 'notBefore':120, 'person':'P2',
                           'at':200, 'spread':0.25},
                          {'id':'fit', 'skill':'service', 'handsOn':30, 'after':[], 'started':{'from':12,'left':5}}]}]}],
             'posted':{'cost':5, 'stays':[], 'tasks':[{'job':'J1','stay':0,'task':'fit','person':'P1','start':12,'end':42}]}}
            """.replace('\'', '"');

    private static final String SMALL = """
            {'now':0, 'horizon':100, 'places':[], 'people':[{'id':'P','skills':['s'],'shifts':[[0,100]]}],
             'jobs':[{'id':'J','stays':[{'places':[],'tasks':[{'id':'a','skill':'s','handsOn':5}]}]}]}
            """.replace('\'', '"');

    @Test
    void everything_a_day_file_can_hold_is_read() {
        Problem problem = read(FULL);
        assertEquals(new Costs(90, 5, 1, 10, 2, 0, 0), problem.costs());
        assertEquals(List.of(Span.of(300, 360)), problem.places().get(0).closed());
        assertEquals(Problem.NO_LIMIT, problem.places().get(1).ratedKg());
        assertEquals(List.of(Span.of(540, 660)), problem.people().get(0).overtime());
        Problem.Task drain = problem.jobs().get(0).stays().get(0).tasks().get(1);
        assertEquals(11, drain.minutesBy("P2"));
        assertEquals(OptionalInt.of(200), drain.at());
        assertEquals(Optional.of(List.of("up")), drain.after());
        assertEquals(0.25, drain.spread());
        assertEquals(12, problem.posted().orElseThrow().tasks().get(0).start());
        PackedPlans.pack(problem, 1, 200);
    }

    @Test
    void what_is_left_out_has_its_standard_value() {
        Problem problem = read(SMALL);
        Problem.Task task = problem.jobs().get(0).stays().get(0).tasks().get(0);
        assertEquals(Problem.Task.of("a", "s", 5), task);
        assertEquals(Costs.STANDARD, problem.costs());
        assertEquals(Optional.empty(), problem.posted());
    }

    @Test
    void null_is_the_same_as_left_out() {
        assertEquals(read(SMALL), read(SMALL.replace("\"handsOn\":5", "\"handsOn\":5,\"at\":null,\"people\":null")));
    }

    /** Each row: what to replace by what in the full file, and the one fault that must be reported. */
    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "'now':20,|'nov':20, 'now':20,|nov: unknown key",
                "'now':20,||now: is missing",
                "'now':20|'now':20.5|now: is 20.5, not a whole number",
                "'now':20|'now':'20'|now: is \"20\", not a whole number",
                "'horizon':4320|'horizon':10000001|horizon: 10000001 is not from 0 to 10000000",
                "'horizon':4320|'horizon':-1|horizon: -1 is not from 0 to 10000000",
                "'now':20|'now':4321|now: 4321 is after the horizon 4320",
                "'late':90|'late':99999999999|costs.late: 99999999999 is not from 0 to 10000000",
                "[[300,360]]|[[360,300]]|places[0].closed[0]: a span cannot end (300) before it starts (360)",
                "[[300,360]]|[[300]]|places[0].closed[0]: is a list, not a pair of whole numbers",
                "'id':'F1'|'id':'H1'|places[1].id: \"H1\" is there twice",
                "[195,300]|[170,300]|people[0].shifts[1]: overlaps people[0].shifts[0]",
                "[[540,660]]|[[170,190]]|people[0].overtime[0]: overlaps people[0].shifts[0]",
                "'sharedSpread':0.1|'sharedSpread':3.5|people[0].sharedSpread: 3.5 is not from 0 to 3",
                "['wash','service']|['wash',7]|people[0].skills[1]: is 7, not a text",
                "'after':['up']|'after':['upp']|jobs[0].stays[0].tasks[1].after[0]: no task \"upp\" in this stay",
                "'after':['up']|'after':['drain']|jobs[0].stays[0].tasks: wait for each other in a circle: drain",
                "'notBy':['fit']|'notBy':['sign']|jobs[0].stays[0].tasks[1].notBy[0]: no other task \"sign\" in this job",
                "{'P2':11}|{'P3':11}|jobs[0].stays[0].tasks[1].handsOnBy: no person \"P3\"",
                "{'P2':11}|{'P2':0}|jobs[0].stays[0].tasks[1].handsOnBy.P2: 0 is not from 1 to 10000000",
                "'person':'P2'|'person':'P9'|jobs[0].stays[0].tasks[1].person: no person \"P9\"",
                "'people':1|'people':0|jobs[0].stays[0].tasks[1].people: 0 is not from 1 to 10000000",
                "'place':'H1'|'place':'H7'|jobs[0].stays[0].place: no place \"H7\"",
                "'place':'H1',||jobs[0].stays[0].place: a stay that has begun needs its place",
                "'left':5|'left':0|jobs[0].stays[0].tasks[2].started.left: 0 is not from 1 to 10000000",
                "'from':12,'left'|'from':21,'left'|jobs[0].stays[0].tasks[2].started.from: 21 is after now, 20",
                "'end':10|'end':1|jobs[0].stays[0].tasks[0].done.end: 1 is before its start 2",
                "'id':'fit'|'id':'drain'|jobs[0].stays[0].tasks[2].id: \"drain\" is there twice",
                "'start':12|'start':'x'|posted.tasks[0].start: is \"x\", not a whole number",
                "'weight':2|'weight':true|jobs[0].weight: is true, not a whole number",
            })
    void a_fault_is_told_with_its_place(String what, String by, String fault) {
        String text = FULL.replace(what.replace('\'', '"'), by == null ? "" : by.replace('\'', '"'));
        Reading<Problem> reading = DayFile.read(text);
        assertTrue(reading.value().isEmpty());
        assertTrue(reading.faults().stream().map(Fault::toString).toList().contains(fault), reading.faults()::toString);
    }

    @Test
    void every_fault_is_told_at_once() {
        String text = FULL.replace("\"now\":20", "\"now\":\"x\"")
                .replace("\"weight\":2", "\"wait\":2")
                .replace("[\"up\"]", "[\"upp\"]");
        assertEquals(
                List.of(
                        "now: is \"x\", not a whole number",
                        "jobs[0].wait: unknown key",
                        "jobs[0].stays[0].tasks[1].after[0]: no task \"upp\" in this stay"),
                DayFile.read(text).faults().stream()
                        .map(Fault::toString)
                        .filter(fault -> !fault.contains("after now"))
                        .toList());
    }

    @Test
    void text_that_is_no_json_is_told_with_line_and_column() {
        List<Fault> faults = DayFile.read("{\"now\": 0,\n \"horizon\": }").faults();
        assertEquals(1, faults.size());
        assertTrue(faults.get(0).where().startsWith("line 2 column 1"), faults::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "7", "null", "{} {}", "{\"now\":1,\"now\":2}"})
    void a_file_that_is_no_single_object_is_refused_with_one_fault(String text) {
        Reading<Problem> reading = DayFile.read(text);
        assertTrue(reading.value().isEmpty());
        assertEquals(1, reading.faults().size(), reading.faults()::toString);
    }

    @Test
    void a_begun_job_that_cannot_be_finished_is_refused() {
        String text = SMALL.replace("\"now\":0", "\"now\":50")
                .replace("\"handsOn\":5", "\"handsOn\":5,\"started\":{\"person\":\"P\",\"from\":40,\"left\":51}");
        assertEquals(
                List.of("jobs[0]: has begun and cannot be finished by the horizon: does not fit before the horizon"),
                DayFile.read(text).faults().stream().map(Fault::toString).toList());
        read(text.replace("51", "50"));
    }

    @Test
    void a_plan_file_comes_back_as_it_was_written() {
        Problem problem = read(FULL);
        Plan plan = PackedPlans.pack(problem, 3, 100).withMillis(12);
        Reading<Plan> reading = PlanFile.read(PlanFile.write(plan));
        assertEquals(List.of(), reading.faults());
        assertEquals(Optional.of(plan), reading.value());
    }

    @Test
    void a_plan_file_with_a_wrong_key_is_refused_with_its_place() {
        assertEquals(
                "[tasks[0].begin: unknown key]",
                PlanFile.read(
                                "{\"tasks\":[{\"job\":\"J\",\"stay\":0,\"task\":\"t\",\"start\":1,\"end\":2,\"begin\":1}]}")
                        .faults()
                        .toString());
    }

    private static Problem read(String text) {
        Reading<Problem> reading = DayFile.read(text);
        assertEquals(List.of(), reading.faults());
        return reading.value().orElseThrow();
    }
}
