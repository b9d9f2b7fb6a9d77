package org.shedboard.term;

import java.io.IOException;

/**
 * The signal by which a shell's job control stops what runs in its window. It goes to all that the shell started together, as the
 * terminal itself would send it: were this process alone stopped, a script around it would keep the shell waiting. Where no shell
 * could call the program back, the system lets the signal do nothing.
 */
final class StopSignal {
    private StopSignal() {}

    /** Comes back when the program goes on, or at once where it cannot be stopped. */
    static void stop() throws IOException {
        try {
            new ProcessBuilder("/bin/sh", "-c", "kill -TSTP 0").start().waitFor();
        } catch (InterruptedException interrupt) {
            Thread.currentThread().interrupt();
        }
    }
}
