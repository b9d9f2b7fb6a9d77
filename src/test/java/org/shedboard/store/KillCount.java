package org.shedboard.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Counts how many acknowledged changes a kill right afterwards would have lost.
 *
 * <p>What a killed process leaves is what other processes see of its file, so a copy taken the moment a change returned stands for
 * the kill; it is opened like any home. Changes come after a pause, as a foreman's do: that is when the database's own writer is
 * about to take them up. More than 45 seconds of it, after which the database uses space again. Arguments: changes to make, and
 * threads that keep the machine busy meanwhile.
 *
 * <p>With {@code served} as a third one, so many kills of a server process under a terminal that goes on changing things.
 */
public final class KillCount {
    private static final long SEED = 20261127;
    /** The database's own writer starts when nothing was written for half a second. */
    private static final int PAUSE_MILLIS = 500;

    private KillCount() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int changes = Integer.parseInt(arguments[0]);
        keepBusy(Integer.parseInt(arguments[1]));
        if (arguments.length > 2) {
            killServer(changes);
            return;
        }
        Path home = Files.createTempDirectory("kill-count");
        int lost = 0;
        int unreadable = 0;
        Random random = new Random(SEED);
        Store.create(home).close();
        try (Store store = Store.open(home)) {
            for (int i = 1; i <= changes; i++) {
                Thread.sleep(PAUSE_MILLIS + random.nextInt(200));
                ShopProcess.countOne(store, "kill", i);
                String there = afterKill(home);
                unreadable += there.isEmpty() ? 1 : 0;
                lost += there.isEmpty() || there.equals(Integer.toString(i)) ? 0 : 1;
            }
        }
        System.out.printf("%d changes, %d lost, %d not to be opened%n", changes, lost, unreadable);
    }

    private static void killServer(int kills) throws IOException, InterruptedException {
        Path home = Files.createTempDirectory("kill-count");
        Store.create(home).close();
        int acknowledged = 0;
        int wrong = 0;
        try (ServedKills served = new ServedKills(home, Files.createTempDirectory("kill-terminal"), new Random(SEED))) {
            for (int i = 1; i <= kills; i++) {
                ServedKills.Count count = served.kill("kill" + i);
                acknowledged += count.acknowledged();
                wrong += isEachOnce(count) ? 0 : 1;
            }
        }
        System.out.printf(
                "%d kills of the server, %d changes acknowledged, after %d kills one lost or made twice%n",
                kills, acknowledged, wrong);
    }

    private static boolean isEachOnce(ServedKills.Count count) {
        return count.there()
                .equals(IntStream.rangeClosed(1, count.acknowledged()).boxed().toList());
    }

    private static String afterKill(Path home) {
        try {
            return ShopProcess.numberAfterKill(home, "kill");
        } catch (StoreFailure broken) {
            return "";
        }
    }

    private static void keepBusy(int threads) {
        for (int i = 0; i < threads; i++) {
            Thread thread = new Thread(() -> {
                long turns = 0;
                while (turns >= 0) {
                    turns++;
                }
            });
            thread.setDaemon(true);
            thread.start();
        }
    }
}
