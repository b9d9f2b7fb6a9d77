package org.shedboard.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.fit.LogNormal;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

class ScorecardTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    /** What was said of each piece: half within 60 minutes, four in five within some 77. */
    private static final LogNormal HOUR = new LogNormal(Math.log(60), 0.3);

    @Test
    void what_stayed_within_is_counted_of_the_last_pieces_alone() {
        List<Said> said = new ArrayList<>(took(12, 200));
        said.addAll(took(5, 50));
        said.addAll(took(3, 70));
        said.addAll(took(2, 90));
        Scorecard card = Scorecard.of(said, List.of(), 10);
        Score score = card.score().orElseThrow();
        assertEquals(10, score.count());
        assertEquals(0.5, score.likelyShare(), 1e-12);
        assertEquals(0.8, score.safeShare(), 1e-12);
        assertEquals(said.subList(12, 22), card.last());
    }

    @Test
    void minutes_off_are_the_mean_distance_from_the_likely_minutes() {
        List<Said> said = new ArrayList<>(took(5, 50));
        said.addAll(took(5, 90));
        Score score = Scorecard.of(said, List.of(), 10).score().orElseThrow();
        assertEquals((5 * 10 + 5 * 30) / 10.0, score.learned().meanMinutesOff(), 1e-9);
        assertEquals(Math.sqrt(50.0 * 90) / 60, score.factor(), 1e-9);
    }

    @Test
    void fewer_than_ten_pieces_are_counted_and_not_scored() {
        Scorecard card = Scorecard.of(took(9, 50), List.of(), 100);
        assertEquals(Optional.empty(), card.score());
        assertEquals(List.of(new Scored<>(Sort.WASH, 9, Optional.empty())), card.bySort());
        assertEquals(9, card.last().size());
    }

    @Test
    void with_nothing_finished_there_is_nothing_on_the_card() {
        Scorecard card = Scorecard.of(List.of(), List.of(), 100);
        assertEquals(Optional.empty(), card.score());
        assertEquals(List.of(), card.bySort());
        assertEquals(List.of(), card.byPerson());
        assertEquals(List.of(), card.calibration().shares());
        assertEquals(List.of(), card.drifts());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void every_part_of_the_card_is_the_score_of_its_own_pieces(long seed) {
        List<Said> said = drawn(seed);
        Scorecard card = Scorecard.of(said, List.of(), 150);
        List<Said> last = said.subList(said.size() - 150, said.size());
        assertEquals(Score.of(last), card.score().orElseThrow());
        card.bySort()
                .forEach(part -> assertPart(part, last, each -> each.lesson().sort() == part.what()));
        card.byClass()
                .forEach(part -> assertPart(
                        part,
                        last,
                        each -> each.lesson().circumstances().classId().equals(part.what())));
        card.byPerson()
                .forEach(part -> assertPart(
                        part,
                        last,
                        each -> each.lesson().circumstances().people().containsKey(part.what())));
        assertEquals(150, card.bySort().stream().mapToInt(Scored::count).sum());
        assertEquals(150, card.byClass().stream().mapToInt(Scored::count).sum());
        assertEquals(150, card.byPerson().stream().mapToInt(Scored::count).sum());
    }

    private static void assertPart(Scored<?> part, List<Said> last, Predicate<Said> isOf) {
        List<Said> own = last.stream().filter(isOf).toList();
        assertEquals(own.size(), part.count());
        assertEquals(own.size() < 10 ? Optional.empty() : Optional.of(Score.of(own)), part.score());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_calibration_agrees_with_the_shares_of_likely_and_safe(long seed) {
        Scorecard card = Scorecard.of(drawn(seed), List.of(), 200);
        List<Calibration.Share> shares = card.calibration().shares();
        assertEquals(9, shares.size());
        assertEquals(card.score().orElseThrow().likelyShare(), shares.get(4).seen(), 1e-12);
        assertEquals(card.score().orElseThrow().safeShare(), shares.get(7).seen(), 1e-12);
        for (int i = 1; i < shares.size(); i++) {
            assertTrue(shares.get(i).seen() >= shares.get(i - 1).seen(), shares.toString());
        }
        assertEquals(
                200, card.calibration().tenths().stream().mapToInt(each -> each).sum());
    }

    @Test
    void pieces_stand_in_the_tenth_of_the_forecast_in_which_they_ended() {
        List<Said> said = new ArrayList<>(took(1, HOUR.quantile(0.05)));
        said.addAll(took(2, HOUR.quantile(0.75)));
        said.addAll(took(3, 10_000));
        assertEquals(List.of(1, 0, 0, 0, 0, 0, 0, 2, 0, 3), Calibration.of(said).tenths());
    }

    @Test
    void who_did_most_of_a_piece_has_it_on_their_account() {
        Said shared = said(DAY, Map.of("P1", 0.3, "P2", 0.7), 60);
        Said alone = said(DAY, Map.of("P1", 1.0), 60);
        Said nobodys = said(DAY, Map.of(), 60);
        assertEquals(
                List.of(new Scored<>("P2", 2, Optional.empty()), new Scored<>("P1", 1, Optional.empty())),
                Scorecard.of(List.of(alone, shared, shared, nobodys), List.of(), 100)
                        .byPerson());
    }

    @Test
    void a_run_that_began_before_the_last_pieces_is_still_named() {
        Random random = new Random(4);
        List<Said> said = new ArrayList<>();
        for (int day = 0; day < 80; day++) {
            double drift = day < 60 ? 0 : 0.4;
            said.add(said(DAY.plusDays(day), Map.of("P1", 1.0), 60 * Math.exp(drift + 0.3 * random.nextGaussian())));
        }
        List<Drift> drifts = Scorecard.of(said, List.of(), 10).drifts();
        assertEquals(1, drifts.size());
        assertEquals(Sort.WASH, drifts.get(0).sort());
        assertEquals(Drift.of(Sort.WASH, said).orElseThrow(), drifts.get(0));
        assertTrue(drifts.get(0).pieces() > 10, drifts.toString());
    }

    @Test
    void what_was_set_aside_stands_with_the_newest_first() {
        SetAside old = aside(DAY);
        SetAside newer = aside(DAY.plusDays(3));
        assertEquals(
                List.of(newer, old),
                Scorecard.of(List.of(), List.of(old, newer), 100).aside());
    }

    @ParameterizedTest
    @CsvSource({
        "0.80, 0.8, 10, MET",
        "0.71, 0.8, 100, MET",
        "0.69, 0.8, 100, TOO_SHORT",
        "0.91, 0.8, 100, TOO_LONG",
        "0.60, 0.8, 10, MET",
        "0.55, 0.5, 100, MET",
        "0.36, 0.5, 100, TOO_SHORT"
    })
    void an_aim_is_missed_only_by_more_than_chance_would(double share, double wanted, int count, Aim aim) {
        assertEquals(aim, Aim.of(share, wanted, count));
    }

    @Test
    void the_drawn_shops_have_all_sorts_classes_and_people() {
        Scorecard card = Scorecard.of(drawn(1), List.of(), 150);
        assertEquals(4, card.bySort().size());
        assertEquals(6, new HashSet<>(card.byClass()).size());
        assertEquals(4, new HashSet<>(card.byPerson()).size());
    }

    private static List<Said> drawn(long seed) {
        List<Lesson> lessons = new DrawnShop(seed)
                .visitsWith(300).stream().map(DrawnShop.Piece::lesson).toList();
        return Hindsight.of(DrawnShop.EXPECTED, lessons);
    }

    private static List<Said> took(int count, double minutes) {
        List<Said> said = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            said.add(said(DAY, Map.of("P1", 1.0), minutes));
        }
        return said;
    }

    private static Said said(LocalDate date, Map<String, Double> people, double minutes) {
        return new Said(lesson(date, people, minutes), HOUR, HOUR, HOUR);
    }

    private static SetAside aside(LocalDate date) {
        return new SetAside(lesson(date, Map.of("P1", 1.0), 850), Lesson.Fault.FAR_OFF, 60);
    }

    private static Lesson lesson(LocalDate date, Map<String, Double> people, double minutes) {
        Circumstances at = new Circumstances("quad", Mud.DUSTY, Depth.STANDARD, OptionalInt.of(8), date, people);
        return new Lesson("V1", Sort.WASH, at, 60, minutes);
    }
}
