package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.Year;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Beginning;
import org.shedboard.day.Books;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Estimate;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.PastFinding;
import org.shedboard.estimate.PastVisit;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Resolution;
import org.shedboard.estimate.Variant;
import org.shedboard.estimate.Work;
import org.shedboard.estimate.Work.WorkTask;
import org.shedboard.estimate.WorkPart;
import org.shedboard.forecast.Experience;
import org.shedboard.forecast.Grounds;
import org.shedboard.forecast.VisitForecast;
import org.shedboard.learn.Lesson;
import org.shedboard.register.Carried;
import org.shedboard.register.IdNumber;
import org.shedboard.register.NumberCheck;
import org.shedboard.register.Stock;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.WorkKind;

/** Whether the seed's catalogue is one a country workshop could believe; what it believes is common practice, no source. */
class SeedTest {
    private static final Catalogue CATALOGUE = Seed.catalogue();
    private static final Setup SETUP = Seed.shop(CATALOGUE);

    @Test
    void each_seed_file_says_inside_that_it_is_invented() {
        for (String file : List.of("catalogue.json", "shop.json", "history.json")) {
            String note = Seed.text(file).lines().skip(1).findFirst().orElseThrow();
            assertTrue(
                    note.contains("\"note\"") && note.toLowerCase(Locale.ROOT).contains("invented"), file);
        }
    }

    @Test
    void each_class_has_twenty_to_forty_five_points_and_some_at_every_depth() {
        assertTrue(CATALOGUE.classes().size() >= 5);
        for (MachineClass machineClass : CATALOGUE.classes()) {
            int points = machineClass.points().size();
            assertTrue(points >= 20 && points <= 45, machineClass.id() + " has " + points);
            for (Depth depth : Depth.values()) {
                assertTrue(machineClass.points().stream().anyMatch(point -> point.due() == depth));
            }
        }
    }

    @Test
    void a_four_wheel_drive_has_four_shafts_and_a_boot_at_either_end() {
        List<Point> boots = CATALOGUE.expectClass("side-by-side").points().stream()
                .filter(point -> point.name().contains("boot ") && point.id().startsWith("boot-"))
                .toList();
        assertEquals(8, boots.size());
        assertEquals(8, boots.stream().map(Point::where).distinct().count());
    }

    @Test
    void every_class_has_points_that_stop_it_being_ridden_for_brakes_frame_and_fuel() {
        for (MachineClass machineClass : CATALOGUE.classes()) {
            for (String word : List.of("brake", "frame", "fuel")) {
                assertTrue(
                        machineClass.points().stream()
                                .anyMatch(point ->
                                        point.stopsRiding() && point.id().contains(word)),
                        machineClass.id() + " " + word);
            }
        }
    }

    @Test
    void every_class_has_an_oil_a_minor_and_a_full_service_each_deeper_than_the_one_before() {
        for (MachineClass machineClass : CATALOGUE.classes()) {
            assertEquals(Depth.ONCE_OVER, byKey(machineClass, "o").depth());
            assertEquals(Depth.STANDARD, byKey(machineClass, "m").depth());
            assertEquals(Depth.FULL, byKey(machineClass, "f").depth());
        }
    }

    @Test
    void there_are_sixteen_works_at_least_and_no_key_begins_another() {
        assertTrue(CATALOGUE.works().size() >= 16);
        for (MachineClass machineClass : CATALOGUE.classes()) {
            List<String> keys = CATALOGUE.worksFor(machineClass.id()).stream()
                    .map(Work::key)
                    .toList();
            for (String key : keys) {
                assertEquals(
                        1, keys.stream().filter(other -> other.startsWith(key)).count(), machineClass.id() + " " + key);
            }
        }
    }

    @Test
    void every_part_is_one_item_for_each_class_in_every_year_from_1990_on_also_in_years_to_come() {
        for (int nextYear : List.of(2027, 2100)) {
            Reading<Catalogue> reading = CatalogueFile.read(Seed.text("catalogue.json"), Year.of(nextYear));
            assertEquals(List.of(), reading.faults());
        }
    }

    @Test
    void no_year_of_any_class_has_a_part_with_a_hole_or_an_overlap() {
        for (Work work : CATALOGUE.works()) {
            for (String classId : work.classes()) {
                work.parts().forEach(part -> assertWhole(part, classId));
            }
        }
    }

    private static void assertWhole(WorkPart part, String classId) {
        List<Variant> variants = part.variantsFor(classId);
        boolean bySerial = variants.stream().anyMatch(Variant::isBySerial);
        for (int year = 1990; year <= 2100 && !bySerial; year++) {
            int modelYear = year;
            long fitting =
                    variants.stream().filter(each -> each.hasYear(modelYear)).count();
            assertEquals(1, fitting, part.name() + " of " + classId + " in " + year);
        }
    }

    @Test
    void the_shelf_knows_every_part_of_every_work_and_is_counted() {
        Set<String> counted = SETUP.stock().stream().map(Stock::itemId).collect(Collectors.toSet());
        for (Work work : CATALOGUE.works()) {
            for (WorkPart part : work.parts()) {
                assertFalse(part.variants().isEmpty(), work.id() + " " + part.name());
                part.variants().forEach(variant -> assertTrue(counted.contains(variant.itemId()), variant.itemId()));
            }
        }
    }

    @Test
    void every_machine_of_the_shop_is_told_its_parts_or_what_to_look_for() {
        int open = 0;
        for (Machine machine : SETUP.machines()) {
            for (Work work : CATALOGUE.worksFor(machine.classId())) {
                for (WorkPart part : work.parts()) {
                    Resolution resolution = part.resolve(machine.classId(), machine.modelYear(), machine.number());
                    assertFalse(resolution.candidates().isEmpty(), machine.id() + " " + part.name());
                    open += resolution.isOpen() ? 1 : 0;
                }
            }
        }
        assertTrue(open > 0, "nothing in the demonstration has to be looked at");
    }

    @Test
    void an_air_filter_is_renewed_when_it_is_dirty_and_nothing_says_that_it_is_cleaned() {
        for (MachineClass machineClass : CATALOGUE.classes()) {
            String item = machineClass
                    .findPoint("air-filter")
                    .orElseThrow()
                    .renewedWith()
                    .orElseThrow();
            assertTrue(CATALOGUE.findItem(item).orElseThrow().isDisposable(), machineClass.id());
        }
        List<String> cleaned = allTasks()
                .map(WorkTask::name)
                .filter(name -> name.toLowerCase(Locale.ROOT).matches(".*(clean|wash|oil) the air filter.*"))
                .toList();
        assertEquals(List.of(), cleaned);
    }

    @Test
    void brakes_and_steering_are_checked_by_another() {
        List<WorkTask> brakes =
                allTasks().filter(task -> task.skill() == Skill.BRAKES).toList();
        assertFalse(brakes.isEmpty());
        brakes.forEach(task -> assertTrue(task.checkedByAnother(), task.id()));
    }

    @Test
    void nothing_that_runs_is_left_unattended() {
        List<WorkTask> unattended =
                allTasks().filter(task -> task.unattended() > 0).toList();
        assertFalse(unattended.isEmpty());
        unattended.forEach(task -> {
            String words = (task.name() + " " + task.caution()).toLowerCase(Locale.ROOT);
            assertFalse(words.contains("engine runs"), task.id());
        });
    }

    @Test
    void a_small_shop_has_a_wash_pad_two_hoists_two_bays_and_four_people() {
        Shop shop = SETUP.shop();
        assertEquals(
                List.of("W1", "H1", "H2", "F1", "F2"),
                shop.places().stream().map(Place::id).toList());
        assertEquals(4, shop.people().size());
        for (Skill skill : Skill.values()) {
            assertTrue(
                    shop.people().stream().filter(person -> person.may(skill)).count() >= 2, "two may " + skill);
        }
    }

    @Test
    void of_the_people_the_foreman_alone_has_a_pin() {
        assertEquals(Set.of("P1"), SETUP.pins().keySet());
        assertTrue(SETUP.shop().expectPerson("P1").role().contains("foreman"));
    }

    @Test
    void some_hoist_carries_every_machine_and_not_every_hoist_carries_all() {
        List<Place> hoists = SETUP.shop().hoists();
        for (Machine machine : SETUP.machines()) {
            assertTrue(hoists.stream().anyMatch(hoist -> hoist.carries(machine.massKg())), machine.toString());
        }
        assertTrue(SETUP.machines().stream().anyMatch(machine -> !hoists.get(0).carries(machine.massKg())));
    }

    @Test
    void no_telephone_number_could_be_somebodys() {
        assertTrue(SETUP.owners().size() >= 12);
        SETUP.owners().forEach(owner -> assertTrue(owner.phone().startsWith("0000 000 "), owner.toString()));
    }

    @Test
    void the_history_is_four_months_of_about_five_visits_a_working_day() {
        List<PastVisit> past = SETUP.past();
        LocalDate first = past.get(0).date();
        LocalDate last = past.get(past.size() - 1).date();
        assertTrue(ChronoUnit.DAYS.between(first, last) >= 115);
        long days = past.stream().map(PastVisit::date).distinct().count();
        double each = (double) past.size() / days;
        assertTrue(each > 4 && each < 6, each + " visits a day");
        assertTrue(past.stream()
                .allMatch(visit -> SETUP.shop().workdays().contains(visit.date().getDayOfWeek())));
        assertTrue(last.isBefore(SETUP.morning().orElseThrow().date()));
    }

    @Test
    void a_dozen_machines_went_home_with_something_to_look_at_again_and_none_that_must_not_be_ridden() {
        Setup quiet = new Setup(SETUP.shop(), SETUP.owners(), SETUP.machines(), SETUP.past(), Optional.empty());
        Books books =
                Beginning.of(CATALOGUE, quiet, LocalDate.of(2026, 5, 12)).day().books();
        List<Carried> carried = books.register().carried();
        assertTrue(carried.stream().map(Carried::machineId).distinct().count() >= 12);
        assertEquals(
                EnumSet.of(Mark.WATCH, Mark.FIX, Mark.NOT_REACHED),
                carried.stream()
                        .map(each -> each.finding().mark())
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Mark.class))));
        for (Carried each : carried) {
            MachineClass machineClass =
                    CATALOGUE.expectClass(books.expectMachine(each.machineId()).classId());
            Point point = machineClass.findPoint(each.finding().pointId()).orElseThrow();
            assertFalse(point.stopsRiding() && each.finding().isFix(), each.toString());
        }
    }

    @Test
    void two_machines_have_a_point_read_off_three_times_and_one_of_them_can_be_of_two_years() {
        Map<String, List<PastVisit>> visits =
                SETUP.past().stream().collect(Collectors.groupingBy(PastVisit::machineId));
        List<Machine> worn = SETUP.machines().stream()
                .filter(machine -> isReadOffThreeTimes(visits.getOrDefault(machine.id(), List.of())))
                .toList();
        assertTrue(worn.size() >= 2, worn.toString());
        assertTrue(worn.stream()
                .filter(machine -> machine.modelYear().isEmpty())
                .map(machine -> IdNumber.of(machine.number()))
                .anyMatch(number -> number.check() == NumberCheck.RIGHT
                        && number.years(2026).size() == 2));
    }

    private static boolean isReadOffThreeTimes(List<PastVisit> visits) {
        return visits.stream()
                .filter(visit -> visit.meters().hours().isPresent())
                .flatMap(visit -> visit.findings().stream())
                .filter(finding -> finding.measured().isPresent())
                .collect(Collectors.groupingBy(PastFinding::pointId, Collectors.counting()))
                .values()
                .stream()
                .anyMatch(times -> times >= 3);
    }

    @Test
    void the_history_washes_and_checks_what_its_catalogue_would() {
        Estimator estimator = new Estimator(CATALOGUE);
        for (PastVisit visit : SETUP.past()) {
            Estimate estimate = estimate(estimator, visit);
            assertEquals(
                    estimate.stays().stream().map(Stay::step).collect(Collectors.toSet()),
                    visit.minutes().keySet());
        }
    }

    /** The median ratio of a log-normal is its scale: the pace, and what the note in the file says was put in. */
    /** Within 15 in a hundred: what the shop does otherwise than its catalogue, as the history's note tells, is in there. */
    @Test
    void the_history_scatters_about_the_catalogue_at_each_persons_pace() {
        Estimator estimator = new Estimator(CATALOGUE);
        for (Person person : SETUP.shop().people()) {
            List<Double> ratios = SETUP.past().stream()
                    .flatMap(visit -> ratios(estimator, visit, person.id()))
                    .sorted()
                    .toList();
            double median = ratios.get(ratios.size() / 2);
            assertEquals(person.pacePercent() / 100.0, median, 0.15 * median, person.name() + " of " + ratios.size());
            double spread = Math.log(ratios.get(ratios.size() * 84 / 100) / median);
            assertTrue(spread > 0.1 && spread < 0.5, person.name() + " scatters by " + spread);
        }
    }

    /** What the first half taught, held against the whole visits of the second, nobody named: 200 visits are a draw themselves. */
    @Test
    void half_of_the_later_history_stays_within_likely_and_four_fifths_within_safe_by_the_earlier() {
        List<PastVisit> past = SETUP.past();
        LocalDate middle = past.get(past.size() / 2).date();
        List<Lesson> earlier =
                Beginning.of(CATALOGUE, SETUP, LocalDate.EPOCH).day().books().experience().lessons().stream()
                        .filter(lesson -> lesson.circumstances().date().isBefore(middle))
                        .toList();
        Experience experience = Experience.of(CATALOGUE, SETUP.shop().people(), earlier, middle);
        Grounds grounds = new Grounds(CATALOGUE, List.of(), experience.learned());
        List<PastVisit> later =
                past.stream().filter(visit -> !visit.date().isBefore(middle)).toList();
        double likely = later.stream()
                .filter(visit -> atFullPace(visit) <= range(grounds, visit).likely())
                .count();
        double safe = later.stream()
                .filter(visit -> atFullPace(visit) <= range(grounds, visit).safe())
                .count();
        assertTrue(later.size() > 190, later.size() + " visits");
        assertEquals(0.50, likely / later.size(), 0.09);
        assertEquals(0.80, safe / later.size(), 0.06);
    }

    @Test
    void every_minute_of_the_history_is_learned_from_breaks_or_not() {
        double told = SETUP.past().stream()
                .flatMap(visit -> visit.minutes().values().stream())
                .mapToInt(Integer::intValue)
                .sum();
        double learned = Beginning.of(CATALOGUE, SETUP, LocalDate.EPOCH).day().books().experience().lessons().stream()
                .mapToDouble(Lesson::actualMinutes)
                .sum();
        assertEquals(told, learned, 1e-6);
    }

    private static Estimate.Range range(Grounds grounds, PastVisit past) {
        Visit visit = new Visit(
                "V",
                past.machineId(),
                OptionalInt.empty(),
                VisitState.IN_YARD,
                intake(past),
                lines(past),
                estimate(new Estimator(CATALOGUE), past).stays(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        return VisitForecast.of(grounds, machineOf(past), visit, past.date()).range();
    }

    /** Minutes it would have taken people who work at the catalogue's pace. */
    private static double atFullPace(PastVisit visit) {
        return visit.minutes().entrySet().stream()
                .mapToDouble(entry -> {
                    Person person = SETUP.shop().expectPerson(visit.people().get(entry.getKey()));
                    return entry.getValue() * 100.0 / person.pacePercent();
                })
                .sum();
    }

    private static Stream<Double> ratios(Estimator estimator, PastVisit visit, String personId) {
        Map<Step, Integer> catalogue = estimate(estimator, visit).stays().stream()
                .collect(Collectors.toMap(
                        Stay::step,
                        stay -> stay.tasks().stream().mapToInt(Task::handsOn).sum()));
        return visit.people().entrySet().stream()
                .filter(entry -> entry.getValue().equals(personId))
                .map(entry -> (double) visit.minutes().get(entry.getKey()) / catalogue.get(entry.getKey()));
    }

    private static Estimate estimate(Estimator estimator, PastVisit visit) {
        return estimator.estimate(machineOf(visit).classId(), intake(visit), lines(visit));
    }

    private static Machine machineOf(PastVisit visit) {
        return SETUP.machines().stream()
                .filter(each -> each.id().equals(visit.machineId()))
                .findFirst()
                .orElseThrow();
    }

    private static Intake intake(PastVisit visit) {
        return new Intake(Instant.EPOCH, visit.mud(), visit.depth(), Condition.SOUND, "");
    }

    private static List<Line> lines(PastVisit visit) {
        return visit.workIds().stream()
                .map(id -> new Line(id, id, id, Payer.OWNER, List.of()))
                .toList();
    }

    /** Each at the shallowest look it is due at: a task of its step looks at it, and takes its minutes. */
    @Test
    void every_point_of_every_class_is_reached_by_an_inspection_at_its_depth() {
        int points = 0;
        Estimator estimator = new Estimator(CATALOGUE);
        for (MachineClass machineClass : CATALOGUE.classes()) {
            for (Point point : machineClass.points()) {
                Intake intake = new Intake(Instant.EPOCH, Mud.MUDDY, point.due(), Condition.SOUND, "");
                Stay stay = estimator.estimate(machineClass.id(), intake, List.of()).stays().stream()
                        .filter(each -> each.step() == point.step())
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(machineClass.id() + " " + point.id()));
                assertTrue(stay.tasks().stream().anyMatch(task -> task.kind() == WorkKind.INSPECT), point.id());
                assertTrue(
                        estimator
                                .pointsOf(machineClass.id(), intake, point.step())
                                .contains(point),
                        point.id());
                points++;
            }
        }
        assertTrue(points > 150, "only " + points + " points");
    }

    @Test
    void whatever_names_its_work_names_one_that_is_offered_for_its_class() {
        long named = 0;
        for (MachineClass machineClass : CATALOGUE.classes()) {
            for (Point point : machineClass.points()) {
                point.fixedBy()
                        .ifPresent(work -> assertTrue(
                                CATALOGUE.expectWork(work).isFor(machineClass.id()), machineClass.id() + " " + work));
                named += point.fixedBy().isPresent() ? 1 : 0;
            }
        }
        assertTrue(named > 50, "only " + named + " points name their work");
    }

    private static Stream<WorkTask> allTasks() {
        return CATALOGUE.works().stream().flatMap(work -> work.tasks().stream());
    }

    private static Work byKey(MachineClass machineClass, String key) {
        return CATALOGUE.worksFor(machineClass.id()).stream()
                .filter(work -> work.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
