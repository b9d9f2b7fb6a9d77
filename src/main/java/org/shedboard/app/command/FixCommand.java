package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Cover;
import org.shedboard.day.Day;
import org.shedboard.day.FixOffer;
import org.shedboard.day.Names;
import org.shedboard.report.FixWords;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What it takes to put a fix right, and what the owner said of it. */
@Command(name = "fix")
final class FixCommand implements Wish.OnTheDay {
    @Parameters(index = "0", paramLabel = "TAG", descriptionKey = "option.tag")
    private String tag;

    @Parameters(index = "1", paramLabel = "POINT", descriptionKey = "option.point")
    private String point;

    @Option(names = "--owner-said", paramLabel = "ANSWER")
    private Optional<OwnersWord.Answer> answer;

    @Option(names = "--by", paramLabel = "NAME")
    private Optional<String> by;

    @Option(names = "--asked", paramLabel = "WHO")
    private Optional<String> asked;

    @Override
    public Reply reply(Seen seen) {
        Visit visit = new Asked(seen).visit(tag);
        if (answer.isPresent()) {
            String person = new Asked(seen).personIdOr(by);
            String of = asked.orElseGet(() -> seen.day().ownerOf(visit).name());
            return new Reply.Carry(new Act.OwnerSaid(visit.id(), point, answer.get(), person, of), Optional.of(person));
        }
        FixOffer.Answer offered = FixOffer.of(seen.outlook(), visit.id(), point);
        if (offered instanceof FixOffer.Answer.NotGiven not) {
            throw new CannotDo(not.refusal());
        }
        FixOffer offer = ((FixOffer.Answer.Given) offered).offer();
        return new Reply.Tell(new Answer(lines(seen.day(), visit, offer), tree(seen.day(), offer)));
    }

    private static List<String> lines(Day day, Visit visit, FixOffer offer) {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say("command.fix.title", offer.point().name(), Names.of(day, visit)));
        FixWords.of(day, offer).forEach(line -> lines.add("  " + line));
        lines.add(Words.say("command.fix.how", offer.point().id()));
        return lines;
    }

    private static Map<String, Object> tree(Day day, FixOffer offer) {
        return new Tree()
                .put("visit", offer.visitId())
                .put("point", offer.point().id())
                .put("work", offer.work().id())
                .put("likely", offer.range().likely())
                .put("safe", offer.range().safe())
                .put(
                        "parts",
                        offer.work().lineParts().stream()
                                .map(part -> new Tree()
                                        .put("name", part.name())
                                        .put("quantity", part.quantity())
                                        .fields())
                                .toList())
                .put(
                        "shortParts",
                        offer.shortParts().stream().map(Cover::itemId).toList())
                .put("readyBefore", offer.readyBefore().map(at -> Tree.time(day, at)))
                .put("ready", offer.ready().map(at -> Tree.time(day, at)))
                .put(
                        "promises",
                        offer.promises().stream().map(kept -> kept(day, kept)).toList())
                .fields();
    }

    private static Map<String, Object> kept(Day day, FixOffer.Kept kept) {
        return new Tree()
                .put("visit", kept.visitId())
                .put("promise", Tree.time(day, kept.promise()))
                .put("before", kept.before())
                .put("after", kept.after())
                .put("endangered", kept.isEndangered())
                .fields();
    }
}
