package org.shedboard.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;

/**
 * Kills the process that has the file open, at random moments while several threads of it change things, opens the shop again each
 * time and counts what is missing. Arguments: how many kills, and a seed.
 */
public final class KillRun {
    private static final int LOADERS = 2;
    private static final int SAID_EVERY = 20;
    private static final int LONGEST_MILLIS = 700;

    private KillRun() {}

    public static void main(String[] arguments) throws Exception {
        System.out.println(run(
                Files.createTempDirectory("kill-run"), Integer.parseInt(arguments[0]), Long.parseLong(arguments[1])));
    }

    static PowerCount.Outcome run(Path home, int kills, long seed) throws Exception {
        Random random = new Random(seed);
        Store.create(home).close();
        PowerCount.Outcome all = new PowerCount.Outcome(0, 0, 0, 0, 0);
        for (int i = 0; i < kills; i++) {
            all = all.plus(once(home, random));
            if ((i + 1) % SAID_EVERY == 0) {
                System.out.println(all);
            }
        }
        return all;
    }

    /** Every process goes on counting where the one before it was shown as saved at least. */
    private static PowerCount.Outcome once(Path home, Random random) throws Exception {
        ShopProcess process = ShopProcess.at(home);
        process.tell("load " + LOADERS);
        int[] saved = new int[LOADERS];
        note(saved, process.hear());
        Thread killer = new Thread(() -> killSoon(process, random.nextInt(LONGEST_MILLIS)));
        killer.start();
        Optional<String> heard = process.hear();
        while (heard.isPresent()) {
            note(saved, heard);
            heard = process.hear();
        }
        killer.join();
        return PowerCount.look(home, saved);
    }

    private static void killSoon(ShopProcess process, int millis) {
        try {
            Thread.sleep(millis);
            process.kill();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** A line says which loader and how far it is; the last one may be cut short, and then says too little at most. */
    private static void note(int[] saved, Optional<String> line) throws IOException {
        String[] words =
                line.orElseThrow(() -> new IOException("it said nothing")).split(" ");
        if (words.length == 2 && !words[1].isEmpty()) {
            int loader = Integer.parseInt(words[0]);
            saved[loader] = Math.max(saved[loader], Integer.parseInt(words[1]));
        }
    }
}
