package org.shedboard.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

class GrowthTest {
    private static final double[] CATALOGUE = {5, 10, 20, 35};

    @Test
    void with_nothing_learned_minutes_grow_as_in_the_catalogue() {
        assertEquals(List.of(5.0, 10.0, 20.0, 35.0), grown(Learned.of(DrawnShop.EXPECTED, List.of())));
    }

    @Test
    void a_caked_machine_is_never_said_to_be_quicker_though_the_few_seen_were() {
        List<Lesson> lessons = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            lessons.add(lesson(i, Mud.MUDDY, 20, 40));
            lessons.add(lesson(i, Mud.CAKED, 35, 25));
        }
        Learned learned = Learned.of(DrawnShop.EXPECTED, lessons);
        assertTrue(
                35 * learned.factor(Sort.WASH, at(Mud.CAKED)) < 20 * learned.factor(Sort.WASH, at(Mud.MUDDY)),
                "what is believed is left alone");
        List<Double> grown = grown(learned);
        assertEquals(grown.get(2), grown.get(3), 1e-9);
        assertTrue(grown.get(0) <= grown.get(1) && grown.get(1) <= grown.get(2), grown.toString());
    }

    @Test
    void a_deeper_look_is_never_said_to_be_shorter() {
        Learned learned = Learned.of(DrawnShop.EXPECTED, List.of());
        assertEquals(
                List.of(15.0, 15.0, 40.0),
                Growth.withDepth(
                        learned, Sort.UNDERSIDE, at(Mud.MUDDY), look -> new double[] {20, 10, 40}[look.ordinal()]));
    }

    @Test
    void the_parts_of_a_story_add_up_to_the_likely_minutes() {
        List<Lesson> lessons = new DrawnShop(2)
                .visitsWith(200).stream().map(DrawnShop.Piece::lesson).toList();
        Learned learned = Learned.of(DrawnShop.EXPECTED, lessons);
        Story story = learned.story(Sort.REPAIR, 50, lessons.get(3).circumstances());
        assertEquals(
                learned.minutes(Sort.REPAIR, 50, lessons.get(3).circumstances()).median(), story.likelyMinutes(), 1e-9);
        assertTrue(story.shares().stream().anyMatch(share -> share.trait() == Trait.PERSON), story.toString());
    }

    private static List<Double> grown(Learned learned) {
        return Growth.withMud(learned, Sort.WASH, at(Mud.CLEAN), mud -> CATALOGUE[mud.grade()]).stream()
                .map(minutes -> Math.round(minutes * 1e9) / 1e9)
                .toList();
    }

    private static Lesson lesson(int number, Mud mud, double catalogue, double actual) {
        return new Lesson("V" + number, Sort.WASH, at(mud), catalogue, actual);
    }

    private static Circumstances at(Mud mud) {
        return new Circumstances(
                "quad", mud, Depth.STANDARD, OptionalInt.of(8), LocalDate.of(2026, 5, 12), Map.of("P1", 1.0));
    }
}
