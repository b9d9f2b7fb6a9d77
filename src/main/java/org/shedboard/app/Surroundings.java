package org.shedboard.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.shedboard.term.Display;

/**
 * What the program finds around it when it starts.
 *
 * @param hasScreen whether there is a terminal that can show a full screen
 */
record Surroundings(
        InputStream in,
        PrintStream out,
        PrintStream err,
        Map<String, String> environment,
        Path userHome,
        boolean hasScreen) {
    /** Those of this process; what it says is UTF-8 whatever the locale. */
    static Surroundings ofProcess() {
        return new Surroundings(
                System.in,
                printing(FileDescriptor.out),
                printing(FileDescriptor.err),
                System.getenv(),
                Path.of(System.getProperty("user.home")),
                Display.isUsable());
    }

    private static PrintStream printing(FileDescriptor where) {
        return new PrintStream(new FileOutputStream(where), true, StandardCharsets.UTF_8);
    }
}
