package org.shedboard.testing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * A browser without a window, Chromium, for pages that the program wrote: what stands in one after its scripts have run, how it
 * is printed, how it looks. Each call starts it anew in a folder of its own, which takes most of a second; it never reaches a network.
 */
public final class Browser {
    private static final String PROGRAM = "chromium";

    /** A hundred times what a page takes on an idle machine. */
    private static final long PATIENCE_SECONDS = 60;

    private static final List<String> ALWAYS = List.of(
            "--headless",
            // the pages are our own, and the sandbox does not start where the tests run as root
            "--no-sandbox",
            "--disable-gpu",
            // shared memory is small in a container
            "--disable-dev-shm-usage",
            "--no-first-run",
            "--disable-extensions",
            "--disable-sync",
            "--disable-component-update",
            "--disable-background-networking",
            "--disable-breakpad",
            // no name and no address leads anywhere
            "--host-resolver-rules=MAP * ~NOTFOUND");

    private Browser() {}

    /** Why no page can be opened here; empty where one can. */
    public static Optional<String> whyNot() throws InterruptedException {
        try {
            Process process = new ProcessBuilder(PROGRAM, "--version")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            boolean ended = process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
            process.destroyForcibly();
            return ended && process.exitValue() == 0 ? Optional.empty() : Optional.of(PROGRAM + " does not start");
        } catch (IOException notFound) {
            return Optional.of(PROGRAM + " is not installed");
        }
    }

    /** Skips the test where there is no browser, except where CI=true: there it is left to fail. */
    public static void demand() throws InterruptedException {
        boolean demanded = "true".equals(System.getenv("CI"));
        Optional<String> reason = demanded ? Optional.empty() : whyNot();
        assumeTrue(reason.isEmpty(), () -> "skipped: " + reason.orElseThrow());
    }

    /** The page as HTML when it has been loaded and its scripts have run. */
    public static String dom(Path html) throws IOException, InterruptedException {
        return new String(open(html, "said", "--dump-dom"), StandardCharsets.UTF_8);
    }

    /** The page printed as PDF, on the paper that its style sheet asks for. */
    public static byte[] pdf(Path html) throws IOException, InterruptedException {
        return open(html, "page.pdf", "--print-to-pdf=page.pdf", "--no-pdf-header-footer");
    }

    /**
     * The upper left of the page as PNG, a pixel for each of its pixels. A script that runs while the page is loaded may be told of
     * a window less high than that; styles follow the height asked for.
     */
    public static byte[] picture(Path html, int width, int height) throws IOException, InterruptedException {
        return open(
                html,
                "page.png",
                "--screenshot=page.png",
                "--window-size=" + width + "," + height,
                "--force-device-scale-factor=1",
                "--hide-scrollbars");
    }

    /** Opens the page and gives what the browser left in the file of that name, where "said" has all that it printed. */
    private static byte[] open(Path html, String result, String... wishes) throws IOException, InterruptedException {
        Path room = Files.createTempDirectory("browser");
        try {
            List<String> command = new ArrayList<>(List.of(PROGRAM));
            command.addAll(ALWAYS);
            command.add("--user-data-dir=" + room.resolve("profile"));
            command.addAll(List.of(wishes));
            command.add(html.toUri().toString());
            run(command, room);
            return Files.readAllBytes(room.resolve(result));
        } finally {
            delete(room.toFile());
        }
    }

    private static void run(List<String> command, Path room) throws IOException, InterruptedException {
        Path complaints = room.resolve("complaints");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(room.toFile())
                .redirectOutput(room.resolve("said").toFile())
                .redirectError(complaints.toFile());
        for (String place : List.of("TMPDIR", "XDG_CONFIG_HOME", "XDG_CACHE_HOME")) {
            builder.environment().put(place, room.toString());
        }
        Process process = builder.start();
        try {
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS))
                throw new AssertionError("waited in vain for " + command + "\n" + Files.readString(complaints));
            if (process.exitValue() != 0)
                throw new AssertionError(
                        "%s ended with %s\n%s".formatted(command, process.exitValue(), Files.readString(complaints)));
        } finally {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
    }

    /** As far as it goes: a part of the browser that is still ending may write once more. */
    private static void delete(File file) {
        File[] inside = Files.isSymbolicLink(file.toPath()) ? null : file.listFiles();
        if (inside != null) {
            for (File each : inside) {
                delete(each);
            }
        }
        file.delete();
    }
}
