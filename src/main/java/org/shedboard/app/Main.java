package org.shedboard.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.shedboard.term.Display;

/** Starts the program. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) throws IOException {
        boolean demo = List.of(arguments).contains("demo");
        Path home = Homes.choose(Optional.empty(), System.getenv(), Path.of(System.getProperty("user.home")));
        try (Display display = Display.open()) {
            new Session(display, home, demo, Optional.<Instant>empty(), false).run();
        }
    }
}
