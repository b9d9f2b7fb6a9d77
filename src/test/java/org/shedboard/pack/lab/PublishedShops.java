package org.shedboard.pack.lab;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shedboard.pack.Plan;

/** Job shops, flexible job shops and weighted tardiness, written as packing problems and held against the best values published. */
final class PublishedShops implements Section {
    private static final double SECONDS = 10;
    private static final long SEED = 1;
    private static final long FT10_AT_MOST = 945;

    /** Some shops, and what is asked of them together. */
    private record Part(ShopGroup group, List<ShopFolder.Shop> shops) {}

    @Override
    public String name() {
        return "shops";
    }

    @Override
    public String what() {
        return "job shop and flexible job shop as day files, 10 s: ft06; la01–la20; ft10; mk01–mk10;"
                + " Hurink la01–10 (edata, rdata, vdata); `twt.csv` rows";
    }

    @Override
    public String target() {
        return "ft06 55; la01–15 optimal but for two, la16–20 ≤ 1 %, ft10 ≤ 945; mk ≤ 2.5 % mean, Hurink ≤ 2 % mean;"
                + " `twt` rows marked yes within 5 %";
    }

    @Override
    public Reached measure(Laboratory lab, Rows rows) throws IOException, InterruptedException {
        Verdict verdict = Verdict.MET;
        List<String> texts = new ArrayList<>();
        for (Part part : parts(lab.terms.folders().reference())) {
            Reached reached = part.group.reached(overs(lab, rows, lab.some(part.shops)));
            rows.add("%s", reached.text());
            verdict = verdict.and(reached.verdict());
            texts.add(reached.text());
        }
        return new Reached(texts.stream().collect(Collectors.joining("; ", "", " (1 seed each)")), verdict);
    }

    private static List<Part> parts(Path reference) throws IOException {
        ShopFolder jobShops = ShopFolder.read(reference.resolve("jsp"));
        ShopFolder flexible = ShopFolder.read(reference.resolve("fjsp"));
        List<ShopFolder.Shop> ft10 = jobShops.matching("ft10");
        double ft10Over =
                ft10.isEmpty() ? 0 : Score.percentOver(FT10_AT_MOST, ft10.get(0).known());
        return List.of(
                new Part(ShopGroup.each("ft06", 0), jobShops.matching("ft06")),
                new Part(ShopGroup.optimalBut("la01–15", 2), jobShops.matching("la(0[1-9]|1[0-5])")),
                new Part(ShopGroup.each("la16–20", 1), jobShops.matching("la(1[6-9]|20)")),
                new Part(ShopGroup.each("ft10", ft10Over), ft10),
                new Part(ShopGroup.mean("mk", 2.5), flexible.matching("mk(0[1-9]|10)")),
                new Part(ShopGroup.mean("Hurink", 2), flexible.matching("[erv]data_la(0[1-9]|10)")),
                new Part(ShopGroup.each("twt", 5), jobShops.reproducedTardiness()));
    }

    private static List<Double> overs(Laboratory lab, Rows rows, List<ShopFolder.Shop> shops)
            throws InterruptedException {
        List<Double> overs = new ArrayList<>();
        for (ShopFolder.Shop shop : shops) {
            Plan plan = lab.pack(shop.problem(), SEED, SECONDS);
            double over = Score.of(plan).percentOver(new Score(0, shop.known()));
            rows.add(
                    "%-12s %4.1f s  best known %6d  found %-8s %s over",
                    shop.name(), lab.scaled(SECONDS), shop.known(), Score.of(plan), Score.percent(over));
            overs.add(over);
        }
        return overs;
    }
}
