package org.shedboard.app.command;

import org.shedboard.day.Act;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is agreed with an owner for all their machines. */
@Command(name = "owner")
final class OwnerCommand implements Wish.OnTheDay {
    @Parameters(index = "0", paramLabel = "NAME", descriptionKey = "option.ownerName")
    private String name;

    @Option(names = "--wash-down-first", negatable = true, required = true)
    private boolean washDownFirst;

    @Override
    public Reply reply(Seen seen) {
        return Reply.Carry.of(new Act.SetWashDown(new Asked(seen).owner(name).id(), washDownFirst));
    }
}
