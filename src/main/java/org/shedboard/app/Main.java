package org.shedboard.app;

import java.util.List;
import java.util.Locale;

/** Starts the program. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        // messages with numbers in them are formatted all over the program, and are to have our digits in every country
        Locale.setDefault(Locale.ROOT);
        int status = Shedboard.run(List.of(arguments), Surroundings.ofProcess());
        if (status != Shedboard.DONE) {
            System.exit(status);
        }
    }
}
