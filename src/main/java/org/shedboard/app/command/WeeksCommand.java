package org.shedboard.app.command;

import picocli.CommandLine.Command;

/** The weeks ahead. */
@Command(name = "weeks")
final class WeeksCommand implements Wish.OnTheDay {
    @Override
    public Reply reply(Seen seen) {
        return new Reply.Tell(WeeksAnswer.of(seen));
    }
}
