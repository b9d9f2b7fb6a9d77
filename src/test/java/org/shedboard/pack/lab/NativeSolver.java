package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import com.google.ortools.Loader;

/** The constraint solver's native library, which is fetched for Linux on x86-64 only. */
final class NativeSolver {
    private NativeSolver() {}

    static void load() {
        Loader.loadNativeLibraries();
    }

    /** Skips the test, with its reason, where the library cannot be loaded; on the build server that is a failure. */
    static void expect() {
        try {
            load();
        } catch (RuntimeException | LinkageError missing) {
            String reason = "the constraint solver's library cannot be loaded here: " + missing.getMessage();
            if ("true".equals(System.getenv("CI"))) {
                fail(reason, missing);
            }
            abort(reason);
        }
    }
}
