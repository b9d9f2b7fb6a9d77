package org.shedboard.ahead;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SideTest {
    private static final Set<String> ADA = Set.of("ada");
    private static final Set<String> BOTH = Set.of("ada", "bo");
    private static final Side<String> EMPTY = Side.of(Map.of("ada", 100, "bo", 60));

    @Test
    void somebody_with_two_skills_is_there_once() {
        Side<String> day = EMPTY.plus(List.of(claim("brakes", ADA, 70), claim("service", BOTH, 80)));
        assertEquals(160, day.open());
        assertEquals(List.of(), day.over());
        assertEquals(10, day.room(ADA));
        assertEquals(10, day.room(BOTH));
    }

    @Test
    void a_group_that_alone_can_do_it_is_full_although_others_have_time() {
        Side<String> day = EMPTY.plus(List.of(claim("brakes", ADA, 101)));
        assertEquals(List.of(new Squeeze<>(List.of("brakes"), 101, 100, false)), day.over());
        assertEquals(0, day.room(ADA));
        assertEquals(60, day.room(BOTH));
        assertEquals(60, day.room(Set.of("bo")));
    }

    @Test
    void two_groups_with_room_each_can_be_too_small_together() {
        Side<String> day = EMPTY.plus(List.of(claim("brakes", ADA, 90), claim("service", BOTH, 71)));
        assertEquals(List.of(new Squeeze<>(List.of("brakes", "service"), 161, 160, true)), day.over());
    }

    @Test
    void groups_that_share_nobody_are_full_each_for_itself() {
        Side<String> day = EMPTY.plus(List.of(claim("brakes", ADA, 101), claim("wash", Set.of("bo"), 61)));
        assertEquals(
                List.of(List.of("brakes"), List.of("wash")),
                day.over().stream().map(Squeeze::what).toList());
    }

    @Test
    void work_that_nobody_can_do_fits_nowhere() {
        Side<String> day = EMPTY.plus(List.of(claim("electrics", Set.of(), 5), claim("brakes", ADA, 101)));
        assertEquals(
                List.of(List.of("electrics"), List.of("electrics", "brakes")),
                day.over().stream().map(Squeeze::what).toList());
        assertEquals(0, day.room(Set.of()));
    }

    @Test
    void what_does_not_fit_goes_over_and_what_fits_exactly_does_not() {
        assertEquals(List.of(), EMPTY.plus(List.of(claim("service", BOTH, 160))).rest());
        assertEquals(
                List.of(claim("service", BOTH, 1)),
                EMPTY.plus(List.of(claim("service", BOTH, 161))).rest());
        assertEquals(
                List.of(claim("service", BOTH, 31)),
                EMPTY.plus(List.of(claim("brakes", ADA, 90), claim("service", BOTH, 101)))
                        .rest());
    }

    @Test
    void more_work_is_told_by_the_group_that_it_is_too_much_for_with_all_that_is_booked() {
        Side<String> day = EMPTY.plus(List.of(claim("brakes", ADA, 130)));
        assertEquals(
                List.of(new Squeeze<>(List.of("brakes"), 135, 100, false)), day.over(List.of(claim("brakes", ADA, 5))));
        assertEquals(List.of(), day.over(List.of(claim("wash", Set.of("bo"), 60))));
        assertEquals(
                List.of(new Squeeze<>(List.of("wash"), 61, 60, false)),
                day.over(List.of(claim("wash", Set.of("bo"), 61))));
    }

    /** Minutes given out one by one to whoever is free, by the augmenting paths of bipartite matching: another way to the same answer. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void as_much_fits_as_when_every_minute_is_given_to_somebody(int seed) {
        Random random = new Random(seed);
        Map<String, Integer> open = Map.of("a", random.nextInt(7), "b", random.nextInt(7), "c", random.nextInt(7));
        List<Claim<Integer>> claims = new ArrayList<>();
        for (int what = 0; what < 5; what++) {
            claims.add(new Claim<>(what, somebody(random), random.nextInt(7)));
        }
        Side<Integer> day = Side.<Integer>of(open).plus(claims);
        int rest = day.rest().stream().mapToInt(Claim::minutes).sum();
        int most = Matching.most(open, claims);
        assertEquals(most, day.booked() - rest);
        assertEquals(most == day.booked(), day.over().isEmpty());
        assertTrue(day.rest().stream().allMatch(left -> left.minutes() <= day.booked(left.what())));
    }

    private static Set<String> somebody(Random random) {
        int bits = 1 + random.nextInt(7);
        List<String> by = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            if ((bits >> i & 1) == 1) {
                by.add(String.valueOf((char) ('a' + i)));
            }
        }
        return Set.copyOf(by);
    }

    private static Claim<String> claim(String what, Set<String> by, int minutes) {
        return new Claim<>(what, by, minutes);
    }
}
