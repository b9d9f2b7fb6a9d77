package org.shedboard.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.Figure;
import org.shedboard.estimate.MachineClass;
import org.shedboard.learn.Doubt;
import org.shedboard.shop.Visit;

/** Years of drawn shops, in which it is known what is wrong with the catalogue. */
class SuggestionsTest {
    private static final String BRAKES = "task:full-quad:brakes-clean";
    private static final String TRACTORS = "inspect:tractor:underside";
    private static final String WASH = "wash:quad:caked";
    private static final int A_YEAR = 420;

    private static Optional<Suggestion> of(List<Suggestion> all, String figure) {
        return all.stream().filter(each -> each.figure().id().equals(figure)).findFirst();
    }

    private static List<String> ids(List<Suggestion> all) {
        return all.stream().map(each -> each.figure().id()).toList();
    }

    @Test
    void a_task_that_takes_half_as_long_again_is_found_and_hardly_anything_else() {
        List<String> others = new ArrayList<>();
        int found = 0;
        for (int seed = 1; seed <= 6; seed++) {
            List<Suggestion> all =
                    new DrawnYard(seed).wrong(BRAKES, 1.5).visits(A_YEAR).suggestions();
            Optional<Suggestion> brakes = of(all, BRAKES);
            found += brakes.isPresent() ? 1 : 0;
            brakes.ifPresent(each -> {
                assertEquals(18, each.now());
                assertTrue(each.proposed() >= 22 && each.proposed() <= 33, each.toString());
                assertTrue(each.evidence().low() > 1, each.toString());
            });
            ids(all).stream().filter(id -> !id.equals(BRAKES)).forEach(others::add);
        }
        assertTrue(found >= 4, "found in " + found);
        assertTrue(others.size() <= 2, others.toString());
    }

    @Test
    void where_whole_stays_are_clocked_a_long_inspection_is_told_from_the_repairs_beside_it() {
        int found = 0;
        for (int seed = 1; seed <= 4; seed++) {
            List<Suggestion> all = new DrawnYard(seed)
                    .clockedByStay()
                    .wrong(TRACTORS, 1.6)
                    .visits(A_YEAR)
                    .suggestions();
            Optional<Suggestion> tractors = of(all, TRACTORS);
            found += tractors.isPresent() ? 1 : 0;
            tractors.ifPresent(each -> assertTrue(each.proposed() >= 32 && each.proposed() <= 48, each.toString()));
        }
        assertTrue(found >= 3, "found in " + found);
    }

    @Test
    void a_figure_that_is_too_long_is_proposed_shorter() {
        List<Suggestion> all =
                new DrawnYard(1).wrong(TRACTORS, 0.6).visits(A_YEAR).suggestions();
        Suggestion first = all.get(0);
        assertEquals(TRACTORS, first.figure().id());
        assertEquals(25, first.now());
        assertTrue(first.proposed() >= 13 && first.proposed() <= 18, first.toString());
    }

    @Test
    void the_strongest_comes_first() {
        List<Suggestion> all = new DrawnYard(1)
                .wrong(TRACTORS, 1.5)
                .wrong(WASH, 1.8)
                .visits(A_YEAR)
                .suggestions();
        assertTrue(ids(all).containsAll(List.of(TRACTORS, WASH)), ids(all).toString());
        for (int i = 1; i < all.size(); i++) {
            assertTrue(all.get(i - 1).evidence().strength()
                    >= all.get(i).evidence().strength());
        }
    }

    @Test
    void a_few_visits_condemn_nothing_however_long_they_took() {
        DrawnYard yard = new DrawnYard(1).wrong(TRACTORS, 3).visits(30);
        Doubt tractors = yard.books(DrawnYard.CATALOGUE).experience().doubts().stream()
                .filter(doubt -> doubt.figure().equals(TRACTORS))
                .findFirst()
                .orElseThrow();
        assertTrue(tractors.strength() > 0, tractors.toString());
        assertTrue(tractors.stays() < Suggestions.ENOUGH_STAYS, tractors.toString());
        assertEquals(Optional.empty(), of(yard.suggestions(), TRACTORS));
    }

    @Test
    void a_slow_apprentice_who_does_all_the_washing_does_not_condemn_the_catalogue() {
        for (int seed = 1; seed <= 3; seed++) {
            List<Suggestion> all = new DrawnYard(seed)
                    .washedBy("P4")
                    .slow("P4", 1.4)
                    .visits(A_YEAR)
                    .suggestions();
            assertTrue(ids(all).stream().noneMatch(id -> id.startsWith("wash:")), ids(all).toString());
        }
    }

    @Test
    void a_shop_that_takes_longer_for_everything_has_no_figure_to_change() {
        List<String> all = new ArrayList<>();
        for (int seed = 1; seed <= 3; seed++) {
            all.addAll(ids(new DrawnYard(seed).paced(1.4).visits(A_YEAR).suggestions()));
        }
        assertTrue(all.size() <= 1, all.toString());
    }

    @Test
    void a_figure_that_was_accepted_is_not_proposed_again_and_the_forecast_stays_where_it_was() {
        DrawnYard yard = new DrawnYard(3).wrong(TRACTORS, 1.5).visits(A_YEAR);
        Suggestion tractors = of(yard.suggestions(), TRACTORS).orElseThrow();
        Catalogue next = tractors.figure().in(DrawnYard.CATALOGUE, tractors.proposed());
        assertEquals(Optional.empty(), of(yard.suggestions(next), TRACTORS));
        Visit visit = yard.visits().stream()
                .filter(each -> yard.machineOf(each).classId().equals("tractor"))
                .findFirst()
                .orElseThrow();
        double before = likely(yard, DrawnYard.CATALOGUE, visit);
        double after = likely(yard, next, visit);
        assertTrue(Math.abs(after / before - 1) < 0.08, before + " before, " + after + " after");
    }

    /** As if it came in by that catalogue and nothing of it had begun. */
    private static double likely(DrawnYard yard, Catalogue catalogue, Visit visit) {
        Visit fresh = visit.withStays(new Estimator(catalogue)
                .estimate(yard.machineOf(visit).classId(), visit.intake(), visit.lines())
                .stays());
        Grounds grounds = yard.books(catalogue).grounds();
        return VisitForecast.of(grounds, yard.machineOf(visit), fresh, LocalDate.of(2027, 1, 4))
                .range()
                .likely();
    }

    @Test
    void nothing_is_said_of_a_class_or_a_work_that_the_catalogue_no_longer_has() {
        DrawnYard yard = new DrawnYard(1).wrong(TRACTORS, 1.6).wrong(BRAKES, 3).visits(A_YEAR);
        Catalogue all = DrawnYard.CATALOGUE;
        List<MachineClass> fewer = all.classes().stream()
                .filter(each -> !each.id().equals("tractor"))
                .toList();
        Catalogue less = new Catalogue(
                fewer,
                all.works().stream()
                        .filter(work -> !work.id().equals("full-quad"))
                        .toList(),
                all.usual(),
                all.spreads(),
                all.testDriveMinutes(),
                all.signOffMinutes());
        assertTrue(ids(yard.suggestions()).contains(TRACTORS));
        List<String> left = ids(yard.suggestions(less));
        assertTrue(
                left.stream().noneMatch(id -> id.contains(":tractor:") || id.contains(":full-quad:")), left.toString());
        assertEquals(Optional.empty(), Figure.find(less, BRAKES));
    }

    @Test
    void what_was_found_by_another_catalogue_is_not_put_on_top_of_what_changed_it() {
        DrawnYard yard = new DrawnYard(3).wrong(TRACTORS, 1.5).visits(A_YEAR);
        Suggestion tractors = of(yard.suggestions(), TRACTORS).orElseThrow();
        Catalogue next = tractors.figure().in(DrawnYard.CATALOGUE, tractors.proposed());
        Experience old = yard.books(DrawnYard.CATALOGUE).experience();
        assertEquals(List.of(), Suggestions.of(next, old));
    }

    @Test
    void a_shop_that_has_finished_nothing_has_nothing_to_say() {
        assertEquals(List.of(), new DrawnYard(1).suggestions());
    }
}
