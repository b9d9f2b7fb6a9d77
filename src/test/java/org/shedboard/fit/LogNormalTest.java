package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the standard formulas worked out with more digits, and published scores. */
class LogNormalTest {
    @ParameterizedTest
    @CsvSource({
        "0, 1, 1.6487212707, 1, 2.1611974159, 0.2776062419, 2.3201253945, 3.6022244793",
        "0.6931471806, 0.5, 2.2662969061, 2, 1.2078010664, 1.0537670366, 3.0463915668, 3.7959054147",
        "4, 0.3, 57.1111860341, 54.5981500331, 17.5261830013, 37.1712097555, 70.2799372226, 80.1953449093"
    })
    void moments_and_quantiles_are_those_of_the_formulas(
            double mu, double sigma, double mean, double median, double sd, double p10, double p80, double p90) {
        LogNormal minutes = new LogNormal(mu, sigma);
        assertEquals(1, minutes.mean() / mean, 1e-9);
        assertEquals(1, minutes.median() / median, 1e-9);
        assertEquals(1, Math.sqrt(minutes.variance()) / sd, 1e-9);
        assertEquals(1, minutes.quantile(0.1) / p10, 1e-9);
        assertEquals(1, minutes.quantile(0.8) / p80, 1e-9);
        assertEquals(1, minutes.quantile(0.9) / p90, 1e-9);
        assertEquals(0.8, minutes.below(p80), 1e-9);
    }

    @Test
    void mean_and_deviation_lead_back_to_it() {
        LogNormal minutes = LogNormal.ofMoments(60, 15 * 15);
        assertEquals(0.2462206771, minutes.sigma(), 1e-10);
        assertEquals(4.0640322513, minutes.mu(), 1e-10);
    }

    /** The first from the test of the R package scoringRules; the others computed, also by numerical integral. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.9, 3, 1.1355264462", "0, 1, 1, 0.2674054670", "4.0943445622, 0.3, 75, 8.6659759007"})
    void its_score_is_the_published_one(double mu, double sigma, double actual, double score) {
        assertEquals(score, new LogNormal(mu, sigma).crps(actual), 1e-8);
    }

    @Test
    void without_spread_the_score_is_the_distance() {
        LogNormal certain = new LogNormal(Math.log(60), 0);
        assertEquals(15, certain.crps(75), 1e-9);
        assertEquals(0, certain.below(59), 0);
        assertEquals(1, certain.below(61), 0);
        assertEquals(60, certain.quantile(0.8), 1e-9);
    }

    /** The vector example of a statistics library's manual, from memory; the figures computed. */
    @ParameterizedTest
    @CsvSource({
        "0 2 3, 0.1, 0.0333333333",
        "1 2 4, 0.1, 0.3",
        "0 2 3, 0.9, 0.3",
        "1 2 4, 0.9, 0.0333333333",
        "0 2 3, 0.5, 0.1666666667",
        "1 2 3, 0.7, 0"
    })
    void the_loss_of_quantiles_is_the_known_one(String quantiles, double probability, double mean) {
        String[] each = quantiles.split(" ");
        double sum = 0;
        for (int actual = 1; actual <= 3; actual++) {
            sum += Pinball.loss(Double.parseDouble(each[actual - 1]), probability, actual);
        }
        assertEquals(mean, sum / 3, 1e-9);
    }

    @Test
    void minutes_without_a_middle_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> new LogNormal(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new LogNormal(1, -0.1));
    }
}
