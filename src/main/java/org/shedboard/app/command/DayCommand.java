package org.shedboard.app.command;

import picocli.CommandLine.Command;

@Command(name = "day")
final class DayCommand implements Wish.OnTheDay {
    @Override
    public Reply reply(Seen seen) {
        return new Reply.Tell(DayAnswer.of(seen));
    }
}
