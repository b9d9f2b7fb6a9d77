package org.shedboard.app.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "next")
final class NextCommand implements Wish.OnTheDay {
    @Parameters(paramLabel = "NAME", descriptionKey = "option.who")
    private String name;

    @Override
    public Reply reply(Seen seen) {
        return new Reply.Tell(NextAnswer.of(seen.outlook(), new Asked(seen).person(name)));
    }
}
