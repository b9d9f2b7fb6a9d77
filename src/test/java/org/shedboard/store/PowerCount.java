package org.shedboard.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Counts what a power cut at a random moment under load leaves of what was shown as saved ({@link LyingDisk}). Arguments: how many power
 * cuts, and a seed.
 */
public final class PowerCount {
    private static final int LOADERS = 2;

    private PowerCount() {}

    public static void main(String[] arguments) throws Exception {
        Path directory = Files.createTempDirectory("power-count");
        Outcome outcome = run(directory, Integer.parseInt(arguments[0]), Long.parseLong(arguments[1]));
        System.out.println(outcome);
    }

    /**
     * What was found after all power cuts.
     *
     * @param lost changes that were shown as saved and are not there
     * @param mismatched journal rows whose line in the files of changes is not of them, or that have none
     */
    record Outcome(int cuts, int saved, int lost, int notOpened, int mismatched) {
        Outcome plus(Outcome other) {
            return new Outcome(
                    cuts + other.cuts,
                    saved + other.saved,
                    lost + other.lost,
                    notOpened + other.notOpened,
                    mismatched + other.mismatched);
        }
    }

    static Outcome run(Path directory, int cuts, long seed) throws Exception {
        Random random = new Random(seed);
        Path home = directory.resolve("home");
        Outcome all = new Outcome(0, 0, 0, 0, 0);
        LyingDisk.beneath(Files.createDirectories(home));
        AtomicInteger[] saved = {new AtomicInteger(), new AtomicInteger()};
        try (Store store = Store.create(home)) {
            store.save(Samples.STAMP, "base", Samples::base);
            Thread[] loaders = load(store, saved);
            for (int i = 0; i < cuts; i++) {
                Thread.sleep(random.nextInt(120));
                int[] before = {saved[0].get(), saved[1].get()};
                Path left = directory.resolve("left" + i);
                LyingDisk.cutPower(left, random);
                all = all.plus(look(left, before));
                Arrival.clear(left);
            }
            for (AtomicInteger each : saved) {
                each.set(-1_000_000_000);
            }
            for (Thread loader : loaders) {
                loader.join();
            }
        }
        return all;
    }

    private static Thread[] load(Store store, AtomicInteger... saved) {
        Thread[] loaders = new Thread[LOADERS];
        for (int i = 0; i < LOADERS; i++) {
            int number = i;
            loaders[i] = new Thread(() -> {
                for (int next = saved[number].get() + 1; next > 0; next = saved[number].incrementAndGet() + 1) {
                    ShopProcess.countOne(store, "loader" + number, next);
                }
            });
            loaders[i].start();
        }
        return loaders;
    }

    /** Opens what was left, and lays what is there beside what was shown as saved, and the journal beside the files of changes. */
    static Outcome look(Path home, int... saved) throws IOException {
        int total = 0;
        for (int each : saved) {
            total += each;
        }
        try (Store store = Store.open(home)) {
            int lost = 0;
            for (int i = 0; i < saved.length; i++) {
                String name = "loader" + i;
                int there = Integer.parseInt(
                        store.read(reader -> reader.setting(name)).orElse("0"));
                lost += Math.max(0, saved[i] - there);
            }
            return new Outcome(1, total, lost, 0, mismatched(store, home));
        } catch (StoreFailure failure) {
            failure.printStackTrace(System.out);
            return new Outcome(1, total, 0, 1, 0);
        }
    }

    static int mismatched(Store store, Path home) {
        List<JournalRow> journal = store.read(reader -> reader.journal(0));
        List<ChangeLine> lines = new ChangeFiles(Home.at(home)).after(0);
        int wrong = Math.abs(journal.size() - lines.size());
        for (int i = 0; i < Math.min(journal.size(), lines.size()); i++) {
            JournalRow row = journal.get(i);
            ChangeLine line = lines.get(i);
            boolean isSame = row.id() == line.id()
                    && line.text().contains("\"what\":\"%s\"".formatted(row.what()))
                    && line.text()
                            .contains("\"text\":\"%s\"".formatted(row.what().replaceFirst(".* ", "")));
            wrong += isSame || row.what().equals("base") ? 0 : 1;
        }
        return wrong;
    }
}
