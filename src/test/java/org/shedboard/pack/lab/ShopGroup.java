package org.shedboard.pack.lab;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** Published shops that are judged together, by how far each one's plan lies over the best value known. */
final class ShopGroup {
    private final String name;
    private final Predicate<List<Double>> isMet;

    private ShopGroup(String name, Predicate<List<Double>> isMet) {
        this.name = name;
        this.isMet = isMet;
    }

    /** All within so many percent of the best known. */
    static ShopGroup each(String name, double percent) {
        return new ShopGroup(name, overs -> overs.stream().allMatch(over -> over <= percent));
    }

    /** All but so many as good as the best known. */
    static ShopGroup optimalBut(String name, int missed) {
        return new ShopGroup(
                name, overs -> overs.stream().filter(over -> over > 0).count() <= missed);
    }

    static ShopGroup mean(String name, double percent) {
        return new ShopGroup(name, overs -> meanOf(overs) <= percent);
    }

    private static double meanOf(List<Double> overs) {
        return overs.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    Reached reached(List<Double> overs) {
        long met = overs.stream().filter(over -> over <= 0).count();
        double worst = overs.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        String text = String.format(
                Locale.ROOT,
                "%s: %d of %d met, mean %s, worst %s",
                name,
                met,
                overs.size(),
                Score.percent(meanOf(overs)),
                Score.percent(worst));
        Verdict verdict = overs.isEmpty() ? Verdict.OPEN : Verdict.of(isMet.test(overs));
        return new Reached(text + (verdict == Verdict.MISSED ? " (missed)" : ""), verdict);
    }
}
