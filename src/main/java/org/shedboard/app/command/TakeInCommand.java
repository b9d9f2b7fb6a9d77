package org.shedboard.app.command;

import java.util.Optional;
import org.shedboard.day.Act;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "take-in")
final class TakeInCommand implements Wish.OnTheDay {
    @Mixin
    private MachineOptions machine;

    @Option(names = "--promise", paramLabel = "TIME")
    private Optional<String> promise;

    @Option(names = "--told", paramLabel = "WHO")
    private Optional<String> told;

    @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.by")
    private Optional<String> by;

    @Override
    public Reply reply(Seen seen) {
        String who = new Asked(seen).personIdOr(by);
        Optional<Act.TakeIn.Said> said = promise.map(time ->
                new Act.TakeIn.Said(new Asked(seen).time(time), who, told.orElseGet(() -> machine.ownerName(seen))));
        return new Reply.Carry(machine.act(seen, said), Optional.of(who));
    }
}
