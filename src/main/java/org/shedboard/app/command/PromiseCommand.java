package org.shedboard.app.command;

import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.shop.Visit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "promise")
final class PromiseCommand implements Wish.OnTheDay {
    private static final String ENOUGH_CHANCE = "80";

    @Parameters(index = "0", arity = "0..1", paramLabel = "TAG", descriptionKey = "option.tag")
    private Optional<String> tag;

    @Mixin
    private MachineOptions machine;

    @Option(names = "--chance", paramLabel = "PERCENT", defaultValue = ENOUGH_CHANCE)
    private int chance;

    @Option(names = "--say", paramLabel = "TIME")
    private Optional<String> say;

    @Option(names = "--to", paramLabel = "WHO")
    private Optional<String> to;

    @Option(names = "--why", paramLabel = "TEXT")
    private Optional<String> why;

    @Option(names = "--owners-wish")
    private boolean ownersWish;

    @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.by")
    private Optional<String> by;

    @Override
    public Reply reply(Seen seen) {
        if (chance < 1 || chance > 99) {
            throw new WrongUse("command.promise.chance_range", chance);
        }
        if (tag.isPresent() == machine.isGiven()) {
            throw new WrongUse("command.promise.which");
        }
        if (tag.isEmpty()) {
            return ask(seen);
        }
        Visit visit = new Asked(seen).visit(tag.get());
        return say.isPresent() ? record(seen, visit, say.get()) : new Reply.Tell(QuoteAnswer.of(seen, visit, chance));
    }

    private Reply ask(Seen seen) {
        if (say.isPresent()) {
            throw new WrongUse("command.promise.take_in_first");
        }
        return new Reply.Tell(QuoteAnswer.of(seen, machine.act(seen, Optional.empty()), chance));
    }

    private Reply record(Seen seen, Visit visit, String time) {
        Asked asked = new Asked(seen);
        String who = asked.personIdOr(by);
        String told = to.orElseThrow(() -> new WrongUse("command.promise.to_whom"));
        Act act = new Act.SayPromise(visit.id(), asked.time(time), who, told, why.orElse(""), ownersWish);
        return new Reply.Carry(act, Optional.of(who));
    }
}
