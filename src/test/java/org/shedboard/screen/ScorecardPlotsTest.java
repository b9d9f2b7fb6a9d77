package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.fit.LogNormal;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Size;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Said;
import org.shedboard.learn.Scorecard;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

class ScorecardPlotsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 3);
    private static final int HEIGHT = 21;
    /** Column from which on the right-hand drawing stands. */
    private static final int RIGHT = 40;

    @Test
    void minutes_stand_where_they_belong_and_those_that_fall_together_are_counted() {
        List<Said> said = new ArrayList<>();
        said.add(said(20, 100));
        said.add(said(50, 50));
        said.add(said(50, 50));
        said.add(said(90, 11));
        List<String> lines = ScorecardPlots.lines(Scorecard.of(said, List.of(), 100), 79, HEIGHT);
        int of20 = columnOf("20", lines);
        int of50 = columnOf("50", lines);
        assertEquals('•', lineOf("100", lines).charAt(of20));
        assertEquals('○', lineOf(" 50", lines).charAt(of50), "two fell together, on the line of what went as said");
        assertEquals('·', lineOf(" 20", lines).charAt(of20));
    }

    /** The line of this figure of the right-hand drawing. */
    private static String lineOf(String figure, List<String> lines) {
        return lines.stream()
                .filter(line -> line.length() > RIGHT && line.substring(RIGHT).contains(figure + " │"))
                .findFirst()
                .orElseThrow();
    }

    /** The column in the middle of this figure below the right-hand drawing. */
    private static int columnOf(String figure, List<String> lines) {
        String figures = lines.get(HEIGHT - 5);
        return figures.indexOf(figure, RIGHT) + figure.length() / 2;
    }

    @Test
    void shares_stand_on_the_diagonal_where_as_many_stayed_within_as_were_said_to() {
        List<Said> said = new ArrayList<>();
        for (int hundredth = 0; hundredth < 100; hundredth++) {
            said.add(said(60, new LogNormal(Math.log(60), 0.3).quantile((hundredth + 0.5) / 100)));
        }
        List<String> right = ScorecardPlots.lines(Scorecard.of(said, List.of(), 100), 79, HEIGHT);
        int diagonal = 0;
        for (int row = 1; row < HEIGHT - 6; row++) {
            String line =
                    right.get(row).substring(0, Math.min(RIGHT, right.get(row).length()));
            diagonal += line.contains("○") || line.contains("◆") ? 1 : 0;
            assertTrue(line.chars().filter(each -> each == '○' || each == '◆').count() <= 1, line);
        }
        assertEquals(9, diagonal);
    }

    @Test
    void of_nothing_nothing_is_drawn() {
        assertTrue(ScorecardPlots.lines(Scorecard.of(List.of(), List.of(), 100), 79, HEIGHT).stream()
                .allMatch(String::isEmpty));
    }

    @Test
    void a_field_of_any_size_simply_draws() {
        Scorecard card = Scorecard.of(List.of(said(20, 100)), List.of(), 100);
        for (int width = 0; width < 90; width++) {
            for (int height = 0; height < 12; height++) {
                Canvas canvas = Canvas.of(new Size(width, height));
                ScorecardPlots.draw(canvas, new Region(0, 0, width, height), card);
                assertEquals(height, canvas.grid().lines().size());
            }
        }
    }

    private static Said said(double likely, double actual) {
        LogNormal minutes = new LogNormal(Math.log(likely), 0.3);
        Circumstances at = new Circumstances("quad", Mud.DUSTY, Depth.STANDARD, OptionalInt.of(8), DAY, Map.of());
        return new Said(new Lesson("V7", Sort.WASH, at, 40, actual), minutes, minutes, minutes);
    }
}
