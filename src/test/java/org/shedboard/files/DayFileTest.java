package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.pack.Costs;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.fault.Fault;
import org.shedboard.testing.OurDigits;

@ExtendWith(OurDigits.class)
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
                "'kind':'hoist', ||places[0].kind: is missing",
                "'ratedKg':2500|'ratedKg':-1|places[0].ratedKg: -1 is not from 0 to 10000000",
                "[[300,360]]|[300,360]|places[0].closed[0]: is 300, not a pair of whole numbers",
                "[[300,360]]|[[300,'x']]|places[0].closed[0][1]: is \"x\", not a whole number",
                "'kind':'floor'|'kind':'floor','rated':1|places[1].rated: unknown key",
                "'skills':['service'], ||people[1].skills: is missing",
                "'skills':['service'], 'shifts':[[0,300]]|'skills':['service']|people[1].shifts: is missing",
                "'id':'P2', 'skills'|'id':'P1', 'skills'|people[1].id: \"P1\" is there twice",
                "'id':'P2', 'skills'|'skills'|people[1].id: is missing",
                "'shifts':[[0,300]]|'shifts':[[0,300]],'tools':[]|people[1].tools: unknown key",
                "'late':90|'lateness':90|costs.lateness: unknown key",
                "'late':90|'late':1e2|costs.late: is 100.0, not a whole number",
                "'id':'J1', ||jobs[0].id: is missing",
                "'massKg':720|'massKg':720.0|jobs[0].massKg: is 720.0, not a whole number",
                "'arrives':30|'arrives':-3|jobs[0].arrives: -3 is not from 0 to 10000000",
                "'promise':540|'promise':'noon'|jobs[0].promise: is \"noon\", not a whole number",
                "'sharedSpread':0.2|'sharedSpread':-0.2|jobs[0].sharedSpread: -0.2 is not from 0 to 3",
                "'sharedSpread':0.2|'sharedSpread':'wide'|jobs[0].sharedSpread: is \"wide\", not a number",
                "'places':['hoist'], 'place'|'place'|jobs[0].stays[0].places: is missing",
                "'places':['hoist'], 'place':'H1'|'places':[], 'place':'H1'|jobs[0].stays[0].place: a stay without kinds of place cannot be in \"H1\"",
                "'skill':'service', 'handsOn':30|'handsOn':30|jobs[0].stays[0].tasks[2].skill: is missing",
                "'handsOn':30, ||jobs[0].stays[0].tasks[2].handsOn: is missing",
                "'id':'fit'|'id':''|jobs[0].stays[0].tasks[2].id: is empty",
                "'handsOn':30|'handsOn':0|jobs[0].stays[0].tasks[2].handsOn: a task lasts at least one minute, with its unattended ones",
                "'unattended':20|'unattended':null,'tended':1|jobs[0].stays[0].tasks[1].tended: unknown key",
                "'unattended':20|'unattended':10000001|jobs[0].stays[0].tasks[1].unattended: 10000001 is not from 0 to 10000000",
                "'after':['up']|'after':'up'|jobs[0].stays[0].tasks[1].after: is \"up\", not a list",
                "'after':['up']|'after':[1]|jobs[0].stays[0].tasks[1].after[0]: is 1, not a text",
                "'id':'up',|'id':'up', 'after':['drain'],|jobs[0].stays[0].tasks: wait for each other in a circle: up, drain",
                "{'P2':11}|[11]|jobs[0].stays[0].tasks[1].handsOnBy: is a list, not an object",
                "{'P2':11}|{'P2':'11'}|jobs[0].stays[0].tasks[1].handsOnBy.P2: is \"11\", not a whole number",
                "'notBy':['fit']|'notBy':['drain']|jobs[0].stays[0].tasks[1].notBy[0]: no other task \"drain\" in this job",
                "'notBefore':120|'notBefore':[120]|jobs[0].stays[0].tasks[1].notBefore: is a list, not a whole number",
                "'at':200|'at':200.5|jobs[0].stays[0].tasks[1].at: is 200.5, not a whole number",
                "'spread':0.25|'spread':3.001|jobs[0].stays[0].tasks[1].spread: 3.001 is not from 0 to 3",
                "'spread':0.25|'spread':1e400|jobs[0].stays[0].tasks[1].spread: Infinity is not from 0 to 3",
                "'started':{'from':12|'started':{'person':'P9','from':12|jobs[0].stays[0].tasks[2].started.person: no person \"P9\"",
                "'from':12,'left':5|'left':5|jobs[0].stays[0].tasks[2].started.from: is missing",
                "'left':5|'left':5,'right':6|jobs[0].stays[0].tasks[2].started.right: unknown key",
                "'person':'P1','from':2|'person':'P9','from':2|jobs[0].stays[0].tasks[0].done.person: no person \"P9\"",
                "'end':10}|'end':21}|jobs[0].stays[0].tasks[0].done.end: 21 is after now, 20",
                "'end':10}|'end':10}, 'started':{'from':2,'left':1}|jobs[0].stays[0].tasks[0]: is done and started at once",
                "'stays':[], 'tasks'|'stays':{}, 'tasks'|posted.stays: is an object, not a list",
                "'cost':5|'price':5|posted.price: unknown key",
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
    @ValueSource(strings = {"7", "null", "{} {}", "{\"now\":1,\"now\":2}"})
    void a_file_that_is_no_single_object_is_refused_with_one_fault(String text) {
        Reading<Problem> reading = DayFile.read(text);
        assertTrue(reading.value().isEmpty());
        assertEquals(1, reading.faults().size(), reading.faults()::toString);
    }

    /** Each row: a file that is wrong as a whole, by its fault. */
    static Stream<Arguments> unreadable() {
        String deep = "[".repeat(5000);
        return Stream.of(
                Arguments.of("", "line 1 column 1: the file is empty"),
                Arguments.of(" \n", "line 1 column 1: the file is empty"),
                Arguments.of(
                        "\ufeff" + SMALL, "line 1 column 1: a byte order mark; the file is to be UTF-8 without one"),
                Arguments.of("[]", "is a list, not an object"),
                Arguments.of(
                        SMALL.replace("'now'".replace('\'', '"'), "\"now\":0,\"now\""),
                        "line 1 column 15: Duplicate Object property \"now\""),
                Arguments.of(SMALL.replace(":100,", ":NaN,"), "line 1 column 24: Non-standard token 'NaN'"),
                Arguments.of(deep, "the file: Document nesting depth (101) exceeds the maximum allowed (100)"),
                Arguments.of(
                        SMALL.replace("100,", "9".repeat(5000) + ","),
                        "the file: Number value length (5000) exceeds the maximum allowed (100)"),
                Arguments.of(SMALL.substring(0, 40), "line 1 column 41: Unexpected end-of-input in property name"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("unreadable")
    void a_file_that_cannot_be_read_at_all_has_one_fault_in_one_line(String text, String fault) {
        Reading<Problem> reading = DayFile.read(text);
        assertTrue(reading.value().isEmpty());
        assertEquals(
                List.of(fault), reading.faults().stream().map(Fault::toString).toList());
    }

    @Test
    void a_long_value_is_not_repeated_whole() {
        String fault = DayFile.read(SMALL.replace(":100,", ":\"" + "k".repeat(5000) + "\","))
                .faults()
                .get(0)
                .toString();
        assertTrue(fault.startsWith("horizon: is \"kkk") && fault.endsWith("…, not a whole number"), fault);
        assertTrue(fault.length() < 150, fault);
    }

    @Test
    void every_window_that_overlaps_another_is_told() {
        String text = SMALL.replace("[[0,100]]", "[[0,100],[10,20],[50,60],[100,120],[110,130]]");
        assertEquals(
                List.of(
                        "people[0].shifts[1]: overlaps people[0].shifts[0]",
                        "people[0].shifts[2]: overlaps people[0].shifts[0]",
                        "people[0].shifts[4]: overlaps people[0].shifts[3]"),
                DayFile.read(text).faults().stream().map(Fault::toString).toList());
    }

    @Test
    void windows_may_touch_and_a_spread_may_be_at_its_ends() {
        read(SMALL.replace("[[0,100]]", "[[50,100],[0,50]],\"sharedSpread\":3"));
        read(SMALL.replace("\"handsOn\":5", "\"handsOn\":5,\"spread\":0"));
    }

    @Test
    void no_two_machines_can_be_in_one_place_and_nobody_goes_on_with_two_tasks() {
        String job = "{\"id\":\"%s\",\"stays\":[{\"places\":[\"hoist\"],\"place\":\"H\",\"tasks\":"
                + "[{\"id\":\"a\",\"skill\":\"s\",\"handsOn\":5,\"started\":{\"person\":\"P\",\"from\":0,\"left\":5}}]}]}";
        String text =
                SMALL.replace("\"places\":[], \"people\"", "\"places\":[{\"id\":\"H\",\"kind\":\"hoist\"}], \"people\"")
                                .replaceAll("\"jobs\":.*\\R", "")
                                .strip()
                        + "\"jobs\":[" + job.formatted("J") + "," + job.formatted("K") + "]}";
        assertEquals(
                List.of(
                        "jobs[1].stays[0].place: \"H\" is taken by jobs[0].stays[0].place",
                        "jobs[1].stays[0].tasks[0].started.person: \"P\" is taken by jobs[0].stays[0].tasks[0].started.person"),
                DayFile.read(text).faults().stream().map(Fault::toString).toList());
    }

    @Test
    void a_later_stay_cannot_have_begun_before_the_one_before_is_over() {
        String stay = "{\"places\":[],\"tasks\":[{\"id\":\"a\",\"skill\":\"s\",\"handsOn\":5}]}";
        String begun = stay.replace("\"handsOn\":5", "\"handsOn\":5,\"started\":{\"from\":0,\"left\":1}");
        assertEquals(
                List.of("jobs[0].stays[0]: is not finished, but a later stay has begun"),
                DayFile.read(SMALL.replace("[" + stay + "]", "[" + stay + "," + begun + "]")).faults().stream()
                        .map(Fault::toString)
                        .toList());
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
