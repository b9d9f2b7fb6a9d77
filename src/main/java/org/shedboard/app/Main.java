package org.shedboard.app;

import java.util.List;

/** Starts the program. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        int status = Shedboard.run(List.of(arguments), Surroundings.ofProcess());
        if (status != Shedboard.DONE) {
            System.exit(status);
        }
    }
}
