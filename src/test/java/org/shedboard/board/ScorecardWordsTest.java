package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Books;
import org.shedboard.fit.LogNormal;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Drift;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Said;
import org.shedboard.learn.Scorecard;
import org.shedboard.learn.SetAside;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

/** What is said of scorecards whose figures can be counted by hand. */
class ScorecardWordsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 3);
    private static final Books BOOKS = FakeShell.demonstration().day().books();
    /** Half within 60 minutes, four in five within some 77. */
    private static final LogNormal OURS = new LogNormal(Math.log(60), 0.3);

    private static final LogNormal CATALOGUE = new LogNormal(Math.log(40), 0.3);

    @Test
    void what_stayed_within_is_said_as_a_foreman_counts() {
        List<String> said = ScorecardWords.of(BOOKS, card(took(10, 50), took(6, 70), took(4, 90)));
        assertEquals(
                List.of(
                        "The last 20 finished pieces of work, from 3 Mar 2026 to 22 Mar 2026; a stay with a look and a repair is two.",
                        "16 of 20 were inside our safe time (aim: four in five): as it should be.",
                        "10 of 20 were inside our likely time (aim: a half): as it should be.",
                        "We were 14 min off on average, 21% of what it took.",
                        "The catalogue alone would have been 71% further off.",
                        "The mean of the last ten of the same sort would have been as near."),
                said.subList(0, 6));
    }

    @Test
    void too_many_beyond_the_safe_time_are_said_to_be_our_fault() {
        List<String> said = ScorecardWords.of(BOOKS, card(took(10, 50), took(10, 120)));
        assertEquals("10 of 20 were inside our safe time (aim: four in five): we say too little.", said.get(1));
    }

    @Test
    void a_catalogue_that_was_nearer_is_said_to_have_been() {
        List<String> said = ScorecardWords.of(BOOKS, card(took(10, 30), took(10, 40)));
        assertEquals("The catalogue alone would have been 80% nearer.", said.get(4));
    }

    @Test
    void when_ours_was_right_to_the_minute_a_rival_is_not_said_to_be_endlessly_worse() {
        assertEquals(
                "The catalogue alone would have been more than ten times as far off.",
                ScorecardWords.of(BOOKS, card(took(10, 60.5))).get(4));
    }

    @Test
    void what_runs_away_is_named_with_since_when_and_by_how_much() {
        assertEquals(
                List.of(
                        "! Repairs run 18% over what we said since 3 Mar 2026 (12 finished).",
                        "! Washes run 20% under what we said since 4 Mar 2026 (30 finished)."),
                ScorecardWords.drifts(List.of(
                        new Drift(Sort.REPAIR, DAY, 1.18, 12), new Drift(Sort.WASH, DAY.plusDays(1), 0.8, 30))));
    }

    @Test
    void too_little_finished_is_said_to_be() {
        assertEquals(
                List.of("Nothing is finished yet: from 10 finished pieces of work on it says here how right we were."),
                ScorecardWords.of(BOOKS, card()));
        assertEquals(
                List.of("4 finished pieces of work are too few: from 10 on it says here how right we were."),
                ScorecardWords.of(BOOKS, card(took(4, 50))));
        assertEquals(List.of(), ScorecardWords.parts(BOOKS, card()));
    }

    @Test
    void a_row_has_a_figure_for_each_heading_and_marks_what_chance_does_not_explain() {
        List<ScorecardWords.Part> parts = ScorecardWords.parts(BOOKS, card(took(10, 50), took(10, 120)));
        ScorecardWords.Row all = parts.get(0).rows().get(1);
        assertEquals(List.of("20", "50%", "!50%", "35 min", "+29%"), all.figures());
        assertEquals(ScorecardWords.headings().size(), all.figures().size() + 1);
        assertEquals("Washes", parts.get(1).rows().get(0).name());
        assertEquals("Quad", parts.get(2).rows().get(0).name());
        assertEquals("Marnie", parts.get(3).rows().get(0).name());
    }

    @Test
    void a_part_with_too_little_in_it_says_so() {
        ScorecardWords.Row row =
                ScorecardWords.parts(BOOKS, card(took(9, 50))).get(1).rows().get(0);
        assertEquals(List.of("9", "too few to say"), row.figures());
    }

    @Test
    void what_was_set_aside_is_said_with_why() {
        SetAside wild = new SetAside(lesson(DAY, 852), Lesson.Fault.FAR_OFF, 41.6);
        Scorecard card = Scorecard.of(List.of(), List.of(wild), 100);
        assertEquals(
                List.of(
                        "3 Mar 2026, V7: wash of a Quad, Marnie. Clocked 14.2 h, expected 42 min: too far from all the others."),
                ScorecardWords.aside(BOOKS, card));
        assertTrue(ScorecardWords.of(BOOKS, card).contains("1 more were set aside and count nowhere."));
    }

    @SafeVarargs
    private static Scorecard card(List<Double>... minutes) {
        List<Said> said = new ArrayList<>();
        for (List<Double> each : minutes) {
            for (double actual : each) {
                said.add(new Said(lesson(DAY.plusDays(said.size()), actual), OURS, CATALOGUE, OURS));
            }
        }
        return Scorecard.of(said, List.of(), 100);
    }

    private static List<Double> took(int count, double minutes) {
        return Collections.nCopies(count, minutes);
    }

    private static Lesson lesson(LocalDate date, double actual) {
        Circumstances at =
                new Circumstances("quad", Mud.DUSTY, Depth.STANDARD, OptionalInt.of(8), date, Map.of("P1", 1.0));
        return new Lesson("V7", Sort.WASH, at, 40, actual);
    }
}
