package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sums of minutes against drawn sums, against the cases that are exact, and against textbook projects. */
class CombinedTest {
    private static final LogNormal WASH = new LogNormal(Math.log(30), 0.35);
    private static final LogNormal LOOK = new LogNormal(Math.log(75), 0.3);
    private static final LogNormal REPAIR = new LogNormal(Math.log(110), 0.5);

    @Test
    void one_part_is_itself() {
        assertEquals(WASH, Combined.of(List.of(WASH), new double[1][1]));
    }

    @Test
    void parts_of_one_spread_that_share_all_of_it_have_the_sum_of_their_quantiles() {
        LogNormal one = new LogNormal(3, 0.4);
        LogNormal other = new LogNormal(4, 0.4);
        LogNormal sum = Combined.of(List.of(one, other), all(2, 0.16));
        for (double share : new double[] {0.05, 0.5, 0.8, 0.95}) {
            assertEquals(1, sum.quantile(share) / (one.quantile(share) + other.quantile(share)), 1e-12);
        }
    }

    @Test
    void more_shared_than_the_spreads_allow_is_taken_for_all_of_it() {
        List<LogNormal> parts = List.of(new LogNormal(3, 0.4), new LogNormal(4, 0.4));
        assertEquals(Combined.of(parts, all(2, 0.16)), Combined.of(parts, all(2, 0.5)));
    }

    @Test
    void certain_parts_add_up() {
        LogNormal sum =
                Combined.of(List.of(new LogNormal(Math.log(20), 0), new LogNormal(Math.log(35), 0)), all(2, 0.1));
        assertEquals(55, sum.quantile(0.95), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"0", "0.03", "0.06", "0.09"})
    void quantiles_are_within_two_per_cent_of_drawn_sums(double shared) {
        List<LogNormal> parts = List.of(WASH, LOOK, REPAIR);
        LogNormal sum = Combined.of(parts, all(3, shared));
        double[] drawn = drawnSums(parts, shared, 400_000);
        for (double share : new double[] {0.5, 0.8, 0.95}) {
            assertEquals(1, sum.quantile(share) / drawn[(int) (share * drawn.length)], 0.02, "at " + share);
        }
    }

    /**
     * Anderson, Sweeney, Williams: An Introduction to Management Science (critical path A-E-H-I-J; 17 weeks, variance 49/18); Taylor:
     * Introduction to Management Science, ch. 8 (1-3-5-7); Hillier and Lieberman: Introduction to Operations Research, "Reliable
     * Construction" (A-B-C-E-F-J-L-N). The triples of the first and third are from memory; means and variances computed.
     */
    @ParameterizedTest
    @CsvSource({
        "4 5 12 2 3 4 2.5 3.5 7.5 1.5 2 2.5 1 2 3, 17, 2.7222222222, 20, 0.965489",
        "5 8 17 3 5 7 4 6 8 3 4 5, 24, 5, 28, 0.963181",
        "1 2 3 2 3.5 8 6 9 18 1 4.5 5 4 4 10 3 9 9 1 5.5 7 5 5.5 9, 44, 9, 47, 0.841345"
    })
    void a_chain_of_a_textbook_project_has_its_mean_variance_and_chance(
            String triples, double mean, double variance, double deadline, double chance) {
        double[] each = Arrays.stream(triples.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        List<LogNormal> chain = new ArrayList<>();
        for (int i = 0; i < each.length; i += 3) {
            chain.add(LogNormal.ofMoments(
                    (each[i] + 4 * each[i + 1] + each[i + 2]) / 6, Math.pow((each[i + 2] - each[i]) / 6, 2)));
        }
        LogNormal sum = Combined.of(chain, all(chain.size(), 0));
        assertEquals(mean, sum.mean(), 1e-9);
        assertEquals(variance, sum.variance(), 1e-9);
        assertEquals(chance, Normal.below((deadline - mean) / Math.sqrt(sum.variance())), 5e-7);
        assertEquals(
                chance, sum.below(deadline), 0.02, "the books take the sum for normal, which is a little less bent");
    }

    @Test
    void parts_that_do_not_go_with_what_they_share_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> Combined.of(List.of(), new double[0][0]));
        assertThrows(IllegalArgumentException.class, () -> Combined.of(List.of(WASH), new double[2][2]));
    }

    private static double[][] all(int parts, double shared) {
        double[][] every = new double[parts][parts];
        for (double[] row : every) {
            Arrays.fill(row, shared);
        }
        return every;
    }

    /** Sums of parts that have a deviation of their own and one in common, sorted. */
    private static double[] drawnSums(List<LogNormal> parts, double shared, int count) {
        Random random = new Random(20);
        double[] sums = new double[count];
        for (int i = 0; i < count; i++) {
            double common = Math.sqrt(shared) * random.nextGaussian();
            for (LogNormal part : parts) {
                double own = Math.sqrt(part.sigma() * part.sigma() - shared);
                sums[i] += Math.exp(part.mu() + common + own * random.nextGaussian());
            }
        }
        Arrays.sort(sums);
        return sums;
    }
}
