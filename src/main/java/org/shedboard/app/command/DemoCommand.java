package org.shedboard.app.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The full screen on the demonstration shop. */
@Command(name = "demo")
public final class DemoCommand implements Wish {
    @Option(names = "--fresh")
    private boolean fresh;

    /** Whether the demonstration is to be made anew first. */
    public boolean isFresh() {
        return fresh;
    }
}
