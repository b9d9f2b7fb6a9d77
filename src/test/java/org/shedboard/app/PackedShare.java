package org.shedboard.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.shedboard.files.DayFile;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.chance.KeptPromises;
import org.shedboard.pack.chance.MeanCost;
import org.shedboard.pack.chance.Prudent;
import org.shedboard.pack.search.Packer;

/**
 * Prints what becomes of promises and mean cost when a day is packed with the minutes that more than half of the tasks stay within,
 * beside the same day packed with the likely ones. Run by hand: day files, which get the spreads of the shop's catalogue; each plan has
 * the same number of tries, and all are replayed on the same drawn days around the likely minutes.
 */
public final class PackedShare {
    private static final List<Integer> SHARES = List.of(60, 70, 80);
    private static final Search SEARCH = Search.of(7, 20_000);
    private static final int DAYS = 2000;
    private static final long UNSEEN = 1005;

    private PackedShare() {}

    public static void main(String[] files) throws IOException {
        double[] kept = new double[SHARES.size() + 1];
        double[] cost = new double[SHARES.size() + 1];
        for (String file : files) {
            Problem problem =
                    Unsure.of(DayFile.read(Files.readString(Path.of(file))).expectValue());
            Plan likely = Packer.pack(problem, SEARCH);
            cost[0] += MeanCost.of(problem, likely, DAYS, UNSEEN).points();
            List<Problem> longer = Prudent.longerDays(problem);
            for (int i = 0; i < SHARES.size(); i++) {
                Plan plan = Packer.pack(longer.get(i), SEARCH);
                KeptPromises promises = KeptPromises.of(problem, likely, plan, DAYS, UNSEEN);
                kept[0] += i == 0 ? promises.one() : 0;
                kept[i + 1] += promises.one() + promises.more();
                cost[i + 1] += MeanCost.of(problem, plan, DAYS, UNSEEN).points();
            }
        }
        System.out.printf(Locale.ROOT, "50 %%: %.3f promises kept, mean cost 1%n", kept[0] / files.length);
        for (int i = 0; i < SHARES.size(); i++) {
            System.out.printf(
                    Locale.ROOT,
                    "%d %%: %.3f promises kept, mean cost %.3f of that%n",
                    SHARES.get(i),
                    kept[i + 1] / files.length,
                    cost[i + 1] / cost[0]);
        }
    }
}
