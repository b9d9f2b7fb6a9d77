package org.shedboard.app;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.Function;
import org.shedboard.register.Finder;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;

/**
 * Prints how long it takes to find among 20,000 drawn machines as somebody types: the making of the finder, and each key of a hundred
 * searches, half of them with a letter wrong, beside a plain scan for the same letters that forgives nothing. Run by hand; the times are
 * the best of several turns in one process.
 */
public final class FindSpeed {
    private static final int MACHINES = 20_000;
    private static final int OWNERS = 6_000;
    private static final int SEARCHES = 100;
    private static final int TURNS = 7;
    private static final String SYLLABLES =
            "quil mar dru pen os thist net crow ash brin cob dap wether gul tus bleak cor hol mot vant";
    private static final String ENDINGS = "gate by mock fold wick wane ley comb mere ton ridge moor";
    private static final String CODES = "0123456789ABCDEFGHJKLMNPRSTUVWXYZ";

    private final Random random = new Random(1);
    private final List<Owner> owners = new ArrayList<>();
    private final List<Machine> machines = new ArrayList<>();
    private final List<String> texts = new ArrayList<>();
    private final List<String> typed = new ArrayList<>();

    public static void main(String[] arguments) {
        new FindSpeed().run();
    }

    private void run() {
        draw();
        double made = best(() -> Finder.of(owners, machines, List.of()));
        Finder finder = Finder.of(owners, machines, List.of());
        int right = (int) typed.stream()
                .filter(text -> !finder.find(text, Map.of()).isEmpty())
                .count();
        System.out.printf(Locale.ROOT, "%d machines of %d owners, %d keys pressed%n", MACHINES, OWNERS, typed.size());
        System.out.printf(Locale.ROOT, "made once: %.1f ms%n", made);
        double[] found = perKey(text -> finder.find(text, Map.of()).size());
        double[] scanned = perKey(this::scan);
        print("found", found);
        print("plain scan", scanned);
        System.out.printf(Locale.ROOT, "ratio of the medians: %.2f%n", median(found) / median(scanned));
        long bare = typed.stream().filter(text -> scan(text) > 0).count();
        System.out.printf(Locale.ROOT, "keys after which something is found: %d, by the plain scan %d%n", right, bare);
    }

    private static void print(String what, double[] millis) {
        System.out.printf(
                Locale.ROOT,
                "%s, ms a key: median %.2f, nine in ten under %.2f, worst %.2f%n",
                what,
                median(millis),
                millis[millis.length * 9 / 10],
                millis[millis.length - 1]);
    }

    private static double median(double[] sorted) {
        return sorted[sorted.length / 2];
    }

    private double[] perKey(Function<String, Integer> search) {
        double[] best = new double[typed.size()];
        Arrays.fill(best, Double.MAX_VALUE);
        for (int turn = 0; turn < TURNS; turn++) {
            for (int i = 0; i < best.length; i++) {
                long from = System.nanoTime();
                search.apply(typed.get(i));
                best[i] = Math.min(best[i], (System.nanoTime() - from) / 1e6);
            }
        }
        Arrays.sort(best);
        return best;
    }

    private static double best(Runnable work) {
        double best = Double.MAX_VALUE;
        for (int turn = 0; turn < TURNS; turn++) {
            long from = System.nanoTime();
            work.run();
            best = Math.min(best, (System.nanoTime() - from) / 1e6);
        }
        return best;
    }

    /** As finding was before: every word must stand somewhere in the text of a machine. */
    private int scan(String text) {
        String[] words = text.toLowerCase(Locale.ROOT).split("\\s+");
        int found = 0;
        for (String each : texts) {
            found += Arrays.stream(words).allMatch(each::contains) ? 1 : 0;
        }
        return found;
    }

    private void draw() {
        for (int i = 0; i < OWNERS; i++) {
            String name = capital(name()) + ", " + capital(name()) + " " + capital(name());
            owners.add(new Owner("O" + i, name, "0000 " + i));
        }
        for (int i = 0; i < MACHINES; i++) {
            Owner owner = owners.get(random.nextInt(OWNERS));
            String label = capital(name()) + " " + (random.nextInt(90) + 10) * 10;
            machines.add(new Machine(
                    "M" + i, owner.id(), "quad", label, OptionalInt.empty(), number(), 300, OptionalInt.empty()));
            texts.add((owner.name() + " " + label + " " + machines.get(i).number()).toLowerCase(Locale.ROOT));
        }
        for (int i = 0; i < SEARCHES; i++) {
            String search = search(machines.get(random.nextInt(MACHINES)), i % 2 == 0);
            for (int end = 1; end <= search.length(); end++) {
                typed.add(search.substring(0, end));
            }
        }
    }

    /** The owner's first word and the maker, or the last figures of the number. */
    private String search(Machine machine, boolean wrong) {
        Owner owner = owners.get(Integer.parseInt(machine.ownerId().substring(1)));
        String text = random.nextInt(3) == 0
                ? machine.number().substring(machine.number().length() - 7)
                : owner.name().split(",")[0] + " " + machine.label().split(" ")[0];
        int at = 1 + random.nextInt(4);
        return wrong ? text.substring(0, at) + text.charAt(at + 1) + text.charAt(at) + text.substring(at + 2) : text;
    }

    private String name() {
        return any(SYLLABLES) + (random.nextBoolean() ? any(SYLLABLES) : "") + any(ENDINGS);
    }

    private String number() {
        StringBuilder number = new StringBuilder();
        random.ints(17, 0, CODES.length()).forEach(index -> number.append(CODES.charAt(index)));
        return number.toString();
    }

    private String any(String words) {
        String[] all = words.split(" ");
        return all[random.nextInt(all.length)];
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
