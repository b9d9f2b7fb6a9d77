package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.shedboard.board.TrialWords;
import org.shedboard.day.Act;
import org.shedboard.day.Comparison;
import org.shedboard.day.WhatIf;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** What the day would come to if other commands were given: they are carried out on a copy of it, and nothing is saved. */
@Command(name = "what-if")
final class WhatIfCommand implements Wish.OnTheDay {
    /** A word of a command: anything in quotation marks, else what has no blank in it. */
    private static final Pattern WORD = Pattern.compile("'([^']*)'|\"([^\"]*)\"|(\\S+)");

    @Parameters(arity = "1..*", paramLabel = "COMMAND", descriptionKey = "option.what_if.command")
    private List<String> commands = List.of();

    @Override
    public Reply reply(Seen seen) {
        List<Act> acts = commands.stream().map(command -> act(command, seen)).toList();
        WhatIf.Answer answer = new WhatIf(acts).on(seen.outlook());
        if (answer instanceof WhatIf.Answer.NotPossible not) {
            throw new CannotDo(not.refusal());
        }
        return new Reply.Tell(told(acts, ((WhatIf.Answer.Tried) answer).comparison(), new TrialWords(seen.day())));
    }

    private static Act act(String command, Seen seen) {
        CommandLines.Read read = CommandLines.read(words(command));
        if (read instanceof CommandLines.Read.Wrong wrong) {
            throw new CannotDo("command.what_if.wrong", wrong.lines().get(0));
        }
        return Optional.of(read)
                .filter(CommandLines.Read.Asked.class::isInstance)
                .flatMap(asked -> ((CommandLines.Read.Asked) asked).wish())
                .filter(Wish.OnTheDay.class::isInstance)
                .map(Wish.OnTheDay.class::cast)
                .filter(wish -> wish.date().isEmpty())
                .map(wish -> wish.reply(seen))
                .filter(Reply.Carry.class::isInstance)
                .map(carry -> ((Reply.Carry) carry).act())
                .orElseThrow(() -> new CannotDo("command.what_if.no_act", command));
    }

    private static List<String> words(String command) {
        return WORD.matcher(command)
                .results()
                .map(word -> Stream.of(word.group(1), word.group(2), word.group(3))
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElseThrow())
                .toList();
    }

    private static Answer told(List<Act> acts, Comparison comparison, TrialWords words) {
        List<String> tried = acts.stream().map(words::act).toList();
        List<String> lines = new ArrayList<>();
        tried.forEach(each -> lines.add(Words.say("command.what_if.tried", each)));
        lines.add(TrialWords.sum(comparison));
        comparison.rows().forEach(row -> lines.addAll(of(row, words)));
        if (comparison.rows().isEmpty()) {
            lines.add(Words.say("trial.nothing_moves"));
        }
        lines.add(Words.say("command.what_if.not_saved"));
        return new Answer(
                lines,
                new Tree()
                        .put("tried", tried)
                        .put("earlier", comparison.earlier())
                        .put("later", comparison.later())
                        .put("saved", comparison.count(Comparison.Fate.SAVED))
                        .put("inDanger", comparison.count(Comparison.Fate.IN_DANGER))
                        .put(
                                "visits",
                                comparison.rows().stream()
                                        .map(row -> tree(row, words))
                                        .toList())
                        .fields());
    }

    private static List<String> of(Comparison.Row row, TrialWords words) {
        List<String> parts = Stream.of(
                        words.ready(row), words.promised(row), TrialWords.chance(row), TrialWords.fate(row))
                .filter(part -> !part.isEmpty())
                .toList();
        List<String> lines =
                new ArrayList<>(List.of(Words.say("trial.move", words.nameOf(row.visit()), String.join(", ", parts))));
        words.moves(row).forEach(move -> lines.add("  " + move));
        return lines;
    }

    private static Object tree(Comparison.Row row, TrialWords words) {
        return new Tree()
                .put("id", row.visit().id())
                .put("tag", row.visit().tag())
                .put("readyBefore", row.before().flatMap(Comparison.Standing::ready))
                .put("readyAfter", row.after().flatMap(Comparison.Standing::ready))
                .put("chance", TrialWords.chance(row))
                .put("moves", words.moves(row))
                .fields();
    }
}
