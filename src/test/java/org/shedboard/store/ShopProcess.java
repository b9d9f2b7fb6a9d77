package org.shedboard.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Another process at the same home, told what to do by lines on its input; what it prints has happened. */
final class ShopProcess implements AutoCloseable {
    private final Process process;
    private final BufferedReader out;

    private ShopProcess(Process process) {
        this.process = process;
        this.out = process.inputReader(StandardCharsets.UTF_8);
    }

    /** Starts one and waits until it has the home open. */
    static ShopProcess at(Path home) throws IOException {
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                ShopProcess.class.getName(),
                home.toString());
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        ShopProcess shop = new ShopProcess(process);
        shop.expect("open");
        return shop;
    }

    void tell(String line) throws IOException {
        process.outputWriter(StandardCharsets.UTF_8).write(line + "\n");
        process.outputWriter().flush();
    }

    /** The next thing it says; empty when it is gone. */
    Optional<String> hear() throws IOException {
        return Optional.ofNullable(out.readLine());
    }

    void expect(String line) throws IOException {
        String said = out.readLine();
        if (!line.equals(said)) {
            throw new AssertionError("expected the other process to say %s, not %s".formatted(line, said));
        }
    }

    String ask(String line) throws IOException {
        tell(line);
        return hear().orElseThrow();
    }

    /** Ends it without a word, as a power cut would; what it said can still be heard, which the process's own way would not let. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        process.waitFor();
    }

    @Override
    public void close() throws IOException {
        if (process.isAlive()) {
            tell("close");
            process.onExit().join();
        }
    }

    public static void main(String[] arguments) throws IOException {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        try (Store store = Store.open(Path.of(arguments[0]))) {
            System.out.println("open");
            String line = in.readLine();
            while (line != null && !line.equals("close")) {
                obey(store, Path.of(arguments[0]), line.split(" "));
                line = in.readLine();
            }
        }
    }

    private static void obey(Store store, Path home, String[] words) {
        switch (words[0]) {
            case "serve" -> System.out.println(serve(home, Integer.parseInt(words[1])));
            case "owner?" -> System.out.println(store.isOwner());
            case "set" -> {
                store.save(Samples.STAMP, "set", tx -> tx.saveSetting(words[1], words[2]));
                System.out.println("set");
            }
            case "get" ->
                System.out.println(
                        store.read(reader -> reader.setting(words[1])).orElse("nothing"));
            case "count" -> count(store, words[1]);
            case "load" -> load(store, Integer.parseInt(words[1]));
            case "deeds" -> deeds(store, words[1], new Random(Long.parseLong(words[2])));
            case "race" -> race(store, words[1], Integer.parseInt(words[2]));
            default -> throw new IllegalArgumentException(String.join(" ", words));
        }
    }

    /** Serves at this port, 0 for any, until the process ends; says the port and, the first time, by what terminals are let in. */
    private static String serve(Path home, int port) {
        Serving serving = Serving.start(home, new InetSocketAddress("127.0.0.1", port), false);
        String said = serving.address().getPort() + " " + serving.fingerprint().hex();
        return serving.drawn()
                .map(drawn -> said + " " + drawn.name() + " " + drawn.password())
                .orElse(said);
    }

    /** Makes changes that are numbered from 1, and says each number once it is told that the change is made; never ends. */
    static void count(Store store, String name) {
        for (int i = 1; ; i++) {
            countOne(store, name, i);
            System.out.println(i);
        }
    }

    /** The same in several threads at once, each going on where its count stands in the records; each says its number before the other. */
    private static void load(Store store, int threads) {
        for (int i = 0; i < threads; i++) {
            String loader = Integer.toString(i);
            new Thread(() -> {
                        String name = "loader" + loader;
                        int from = Integer.parseInt(
                                store.read(reader -> reader.setting(name)).orElse("0"));
                        for (int next = from + 1; ; next++) {
                            countOne(store, name, next);
                            System.out.println(loader + " " + next);
                        }
                    })
                    .start();
        }
    }

    static void countOne(Store store, String name, int number) {
        store.save(Samples.STAMP, name + " " + number, tx -> tx.saveSetting(name, Integer.toString(number)));
    }

    /** The number of a count as a kill at this moment would leave it in the records: other processes see of the file what a kill leaves. */
    static String numberAfterKill(Path home, String name) {
        try {
            Path killed = Files.createTempDirectory(home, "killed");
            Files.copy(home.resolve("shop.mv.db"), killed.resolve("shop.mv.db"));
            try (Store store = Store.open(killed)) {
                return store.read(reader -> reader.setting(name)).orElse("0");
            }
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Makes drawn changes, and says each one's id with a full stop once it is told that the change is made; never ends. */
    private static void deeds(Store store, String name, Random random) {
        for (int i = 1; ; i++) {
            Deed deed = Deed.drawn(random, name + "-" + i);
            deed.in(store);
            System.out.println(deed.id() + ".");
        }
    }

    /** Tries to be the first at each of so many things. */
    static void race(Store store, String name, int things) {
        for (int i = 0; i < things; i++) {
            String thing = "hoist " + i;
            boolean isFirst = store.change(Samples.STAMP, "start", tx -> isFirst(tx, thing, name));
            System.out.println(isFirst ? "first" : "late");
        }
    }

    static boolean isFirst(Tx tx, String thing, String name) {
        boolean isFree = tx.setting(thing).isEmpty();
        if (isFree) {
            tx.saveSetting(thing, name);
        }
        return isFree;
    }
}
