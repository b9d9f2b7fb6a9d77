package org.shedboard.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.Arrays;
import java.util.List;

/**
 * Times a change with and without its line in the day's file, in turns within one run: first one that writes a single row, then one that
 * saves a visit with everything in it. Argument: how many of each.
 */
public final class ChangeCost {
    private static final int WARM_UP = 50;

    private ChangeCost() {}

    public static void main(String[] arguments) throws Exception {
        int count = Integer.parseInt(arguments[0]);
        Path directory = Files.createTempDirectory("change-cost");
        Home with = Home.at(directory.resolve("with"));
        with.create();
        Link written =
                HomeDoor.to(with, new Schema(Migration.all()), Intent.MAKE).enter();
        Link bare = bare(Home.at(directory.resolve("without")));
        for (Link each : List.of(written, bare)) {
            new Attempt<>(Samples.STAMP, "base", tx -> {
                        Samples.base(tx);
                        return null;
                    })
                    .over(each);
        }
        measure("one row", count, written, bare, false);
        measure("a whole visit", count, written, bare, true);
        written.close();
        bare.close();
    }

    /** Commits are made durable, and that is all. */
    private static Link bare(Home home) throws Exception {
        home.create();
        Sql admin = new Migrator(home, new Schema(Migration.all())).open(Intent.MAKE);
        admin.run("SET WRITE_DELAY 10000");
        admin.run("CREATE CACHED LOCAL TEMPORARY TABLE forced (turn BIGINT)");
        admin.run("INSERT INTO forced VALUES (0)");
        Checkpoints checkpoints = new Checkpoints(admin, Runnable::run, sql -> {}, sql -> {});
        Link.Tie tie = new Link.Tie() {
            @Override
            public void sync() {
                checkpoints.await();
            }

            @Override
            public boolean keepsChangeLines() {
                return false;
            }

            @Override
            public Sql another() {
                return admin;
            }

            @Override
            public void close() {
                admin.run("SHUTDOWN");
            }
        };
        return new Link(
                new Sql(home.connect(false), Connection.TRANSACTION_REPEATABLE_READ),
                new Sql(home.connect(false), Connection.TRANSACTION_READ_COMMITTED),
                tie,
                true);
    }

    private static void measure(String what, int count, Link written, Link bare, boolean isVisit) {
        long[] with = new long[count];
        long[] without = new long[count];
        for (int i = -WARM_UP; i < count; i++) {
            long first = change(written, i, isVisit);
            long second = change(bare, i, isVisit);
            if (i >= 0) {
                with[i] = first;
                without[i] = second;
            }
        }
        Arrays.sort(with);
        Arrays.sort(without);
        double median = with[count / 2] / 1e6;
        double alone = without[count / 2] / 1e6;
        System.out.printf(
                "%s: %.2f ms with its line, %.2f ms without, ratio %.2f (95 in 100 within %.2f and %.2f ms)%n",
                what, median, alone, median / alone, with[count * 95 / 100] / 1e6, without[count * 95 / 100] / 1e6);
    }

    private static long change(Link link, int number, boolean isVisit) {
        long begin = System.nanoTime();
        new Attempt<>(Samples.STAMP, "count " + number, tx -> {
                    if (isVisit) {
                        tx.saveVisit(Samples.fullVisit("v" + number, 1000 + number));
                    } else {
                        tx.saveSetting("count", Integer.toString(number));
                    }
                    return null;
                })
                .over(link);
        return System.nanoTime() - begin;
    }
}
