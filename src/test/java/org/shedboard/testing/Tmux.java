package org.shedboard.testing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.Assumptions;

/**
 * A real terminal with a shell in it, in a tmux server of its own. Nothing here sleeps and hopes: what is expected is
 * waited for, and when it does not come the last screen is shown.
 */
public final class Tmux implements AutoCloseable {
    /** A start takes two seconds, and far longer where many others are at work on the machine. */
    private static final long PATIENCE_NANOSECONDS = TimeUnit.SECONDS.toNanos(60);

    private final String server = "shedboard-" + UUID.randomUUID();

    /** Opens a window of that size; without tmux the test is skipped, but where CI=true it fails. */
    public Tmux(int columns, int rows) throws IOException, InterruptedException {
        boolean demanded = "true".equals(System.getenv("CI"));
        Assumptions.assumeTrue(demanded || isInstalled(), "skipped: tmux is not installed");
        run(
                "-f",
                "/dev/null",
                "new-session",
                "-d",
                "-x",
                "" + columns,
                "-y",
                "" + rows,
                "exec env TERM=tmux-256color LC_ALL=C.UTF-8 PS1='$ ' sh");
        run("set-option", "-s", "escape-time", "10");
        awaitText("$");
    }

    /** Types a command and Enter. */
    public void enter(String command) throws IOException, InterruptedException {
        run("send-keys", "-l", command);
        run("send-keys", "Enter");
    }

    /** Presses keys by tmux's names for them: Up, C-l, Escape, x. */
    public void press(String... keys) throws IOException, InterruptedException {
        List<String> arguments = new ArrayList<>(List.of("send-keys"));
        arguments.addAll(List.of(keys));
        run(arguments.toArray(String[]::new));
    }

    /** Pastes a text as the terminal does, between marks where the program asks for them. */
    public void paste(String text) throws IOException, InterruptedException {
        run("set-buffer", text);
        run("paste-buffer", "-p");
    }

    public void resize(int columns, int rows) throws IOException, InterruptedException {
        run("resize-window", "-x", "" + columns, "-y", "" + rows);
    }

    /** What the window shows. */
    public String screen() throws IOException, InterruptedException {
        return run("capture-pane", "-p");
    }

    /** One of tmux's own facts about the window, such as {@code alternate_on}. */
    public String fact(String name) throws IOException, InterruptedException {
        return run("display-message", "-p", "#{" + name + "}").strip();
    }

    /** Waits until the window shows the text; gives the screen. */
    public String awaitText(String text) throws IOException, InterruptedException {
        return await(screen -> screen.contains(text), text);
    }

    /** Waits until the window does not show the text any more; gives the screen. */
    public String awaitWithout(String text) throws IOException, InterruptedException {
        return await(screen -> !screen.contains(text), "a screen without " + text);
    }

    @Override
    public void close() throws IOException {
        try {
            run("kill-server");
        } catch (InterruptedException interrupt) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits until the window shows what is expected; gives the screen. */
    public String await(Predicate<String> expected, String description) throws IOException, InterruptedException {
        long end = System.nanoTime() + PATIENCE_NANOSECONDS;
        String screen = screen();
        while (!expected.test(screen)) {
            if (System.nanoTime() > end)
                throw new AssertionError("waited in vain for " + description + "; the screen is\n" + screen);
            Thread.sleep(20);
            screen = screen();
        }
        return screen;
    }

    private static boolean isInstalled() throws InterruptedException {
        try {
            return new ProcessBuilder("tmux", "-V").start().waitFor() == 0;
        } catch (IOException notFound) {
            return false;
        }
    }

    private String run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("tmux", "-u", "-L", server));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getOutputStream().close();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return output;
    }
}
