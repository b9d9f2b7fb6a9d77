package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.board.MinuteWords;
import org.shedboard.day.Act;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.Quote;
import org.shedboard.day.Quoting;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** When a machine could be ready, said: as the day is posted, packed anew, and had it come in clean. */
final class QuoteAnswer {
    private final Day day;
    private final String name;
    private final Quote quote;
    private final Optional<Quote> clean;
    private final List<String> notes;

    private QuoteAnswer(Day day, String name, Quote quote, Optional<Quote> clean, List<String> notes) {
        this.day = day;
        this.name = name;
        this.quote = quote;
        this.clean = clean;
        this.notes = List.copyOf(notes);
    }

    /** For a machine that is here or expected; what if it were clean is said only before work on it begins. */
    static Answer of(Seen seen, Visit visit, int chance) {
        Day day = seen.day();
        String name = Names.of(day, visit);
        if (!visit.state().isOpen()) {
            throw new CannotDo("nothing_to_promise", name);
        }
        Optional<Quote> clean = visit.hasBegun() || visit.intake().mud() == Mud.CLEAN
                ? Optional.empty()
                : Optional.of(
                        expect(Quoting.ofClean(day, visit, chance, seen.now()).atOnce()));
        Quote quote = expect(Quoting.of(day, visit, chance, seen.now()).whole(seen.repacking()));
        return new QuoteAnswer(day, name, quote, clean, List.of()).answer();
    }

    /** For a machine that is only described. */
    static Answer of(Seen seen, Act.TakeIn wanted, int chance) {
        Quote quote = expect(Quoting.of(seen.day(), wanted, chance, seen.now()).whole(seen.repacking()));
        Optional<Quote> clean = wanted.mud() == Mud.CLEAN
                ? Optional.empty()
                : Optional.of(expect(Quoting.of(seen.day(), Quoting.cameInClean(wanted), chance, seen.now())
                        .atOnce()));
        String name = wanted.which()
                .machineId()
                .map(id -> seen.day()
                        .books()
                        .expectOwner(seen.day().books().expectMachine(id).ownerId())
                        .name())
                .orElse(wanted.whose().name());
        return new QuoteAnswer(seen.day(), name, quote, clean, AtTheDoor.of(seen, wanted)).answer();
    }

    private static Quote expect(Quote.Answer answer) {
        if (answer instanceof Quote.Answer.NotGiven not) {
            throw new CannotDo(not.refusal().name(), not.refusal().values().toArray());
        }
        return ((Quote.Answer.Given) answer).quote();
    }

    private Answer answer() {
        Tree tree = new Tree()
                .put("name", name)
                .put("likely", quote.range().likely())
                .put("safe", quote.range().safe())
                .put("sentence", MinuteWords.toOwner(quote.why()))
                .put("cleaning", quote.estimate().cleaning())
                .put("asPosted", quote.asPosted().map(this::tree))
                .put("repacked", quote.repacked().map(this::tree))
                .put("cameInClean", clean.flatMap(Quote::asPosted).map(this::tree))
                .put("notes", notes);
        return new Answer(lines(), tree.fields());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        var range = quote.range();
        lines.add(Words.say(
                "command.promise.takes",
                name,
                range.likely(),
                range.safe(),
                quote.estimate().cleaning()));
        lines.add("  " + MinuteWords.toOwner(quote.why()));
        if (quote.asPosted().isEmpty() && quote.repacked().isEmpty()) {
            lines.add("  " + Words.say("form.not_in_time"));
        }
        quote.asPosted().ifPresent(offer -> lines.add("  " + said("form.as_posted", offer)));
        quote.repacked().ifPresent(offer -> lines.add("  " + said("form.repacked", offer)));
        clean.flatMap(Quote::asPosted).ifPresent(offer -> lines.add("  " + said("command.promise.clean", offer)));
        notes.forEach(note -> lines.add("  " + note));
        return lines;
    }

    private String said(String sentence, Quote.Offer offer) {
        return Words.say(sentence, Clocks.sayTime(day, offer.promise()), offer.chance());
    }

    private Map<String, Object> tree(Quote.Offer offer) {
        return new Tree()
                .put("planned", Tree.time(day, offer.planned()))
                .put("promise", Tree.time(day, offer.promise()))
                .put("chance", offer.chance())
                .fields();
    }
}
