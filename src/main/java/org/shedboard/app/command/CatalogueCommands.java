package org.shedboard.app.command;

import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Books;
import org.shedboard.forecast.Suggestion;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The figures that the shop plans by, put right by what it finished, and how much of the likely minutes' spread a plan allows for. */
final class CatalogueCommands {
    private CatalogueCommands() {}

    /** Lists the figures that finished work contradicts, or accepts one. */
    @Command(name = "suggest")
    static final class Suggest implements Wish.OnTheDay {
        @Option(names = "--accept", paramLabel = "ID")
        private Optional<String> accepted;

        @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.by")
        private Optional<String> by;

        @Override
        public Reply reply(Seen seen) {
            Books books = seen.day().books();
            List<Suggestion> list = books.suggestions();
            if (accepted.isEmpty()) {
                return new Reply.Tell(SuggestAnswer.of(books.catalogue(), list));
            }
            String who = new Asked(seen)
                    .person(by.orElseThrow(() -> new WrongUse("command.suggest_by")))
                    .id();
            Suggestion chosen = list.stream()
                    .filter(each -> each.figure().id().equals(accepted.get()))
                    .findFirst()
                    .orElseThrow(() -> new CannotDo("command.suggest_unknown", accepted.get()));
            Act act = new Act.AcceptFigure(chosen.figure().id(), chosen.now(), chosen.proposed(), who);
            return new Reply.Carry(act, Optional.of(who));
        }
    }

    /** Says, or changes, which minutes a plan gives a task. */
    @Command(name = "margin")
    static final class Margin implements Wish.OnTheDay {
        @Parameters(index = "0", arity = "0..1", paramLabel = "PERCENT", descriptionKey = "option.percent")
        private Optional<Integer> percent;

        @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.by")
        private Optional<String> by;

        @Override
        public Reply reply(Seen seen) {
            if (percent.isEmpty()) {
                return new Reply.Tell(answer(seen.day().books().foresight().packedPercent()));
            }
            String who = new Asked(seen)
                    .person(by.orElseThrow(() -> new WrongUse("command.margin_by")))
                    .id();
            return new Reply.Carry(new Act.SetPackedPercent(who, percent.get()), Optional.of(who));
        }

        private static Answer answer(int packed) {
            return new Answer(
                    List.of(Words.say("margin.packed", packed)),
                    new Tree().put("packedPercent", packed).fields());
        }
    }
}
