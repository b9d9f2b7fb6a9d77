package org.shedboard.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.shedboard.term.Display;

/**
 * What the program finds around it when it starts.
 *
 * @param hasScreen whether there is a terminal that can show a full screen
 * @param console where a PIN can be typed unseen; empty without a terminal
 * @param isWatched whether what is said on standard error goes to a terminal
 * @param processors how many the machine has
 */
record Surroundings(
        InputStream in,
        PrintStream out,
        PrintStream err,
        Map<String, String> environment,
        Path userHome,
        boolean hasScreen,
        Optional<PinReader.Hidden> console,
        boolean isWatched,
        int processors) {
    private static final int USUAL_COLUMNS = 80;

    /** Where Linux says what standard error is. */
    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    /** Those of this process; what it says is UTF-8 whatever the locale. */
    static Surroundings ofProcess() {
        return new Surroundings(
                System.in,
                printing(FileDescriptor.out),
                printing(FileDescriptor.err),
                System.getenv(),
                Path.of(System.getProperty("user.home")),
                Display.isUsable(),
                Display.console().map(PinReader.Hidden::at),
                isTerminal(STANDARD_ERROR),
                Runtime.getRuntime().availableProcessors());
    }

    /** Elsewhere than on Linux nobody says it of standard error alone; then it goes where the other two go. */
    private static boolean isTerminal(Path stream) {
        try {
            String target = Files.readSymbolicLink(stream).toString();
            return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || target.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException elsewhere) {
            return System.console() != null;
        }
    }

    /** How wide a line may be: as the environment says, else as a terminal is at least. */
    int columns() {
        String said = environment.getOrDefault("COLUMNS", "");
        return said.matches("[1-9][0-9]{1,2}") ? Integer.parseInt(said) : USUAL_COLUMNS;
    }

    private static PrintStream printing(FileDescriptor where) {
        return new PrintStream(new FileOutputStream(where), true, StandardCharsets.UTF_8);
    }
}
