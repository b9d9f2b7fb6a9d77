package org.shedboard.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.day.Clocks;
import org.shedboard.day.Concern;
import org.shedboard.day.Day;
import org.shedboard.day.Round;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** Today's round of calls, said. */
public final class RoundWords {
    private RoundWords() {}

    public static String total(Round round) {
        return switch (round.calls().size()) {
            case 0 -> Words.say("round.nobody");
            case 1 -> Words.say("round.total.one");
            default -> Words.say("round.total.more", round.calls().size());
        };
    }

    /** All the reasons, the most urgent first. */
    public static String why(Round.Call call) {
        return call.concerns().stream()
                .flatMap(concern -> Round.Why.of(concern.kind()).stream())
                .distinct()
                .map(why -> Words.say("roundWhy." + why))
                .collect(Collectors.joining(", "));
    }

    /** What to say to the owner, as one would say it. */
    public static String toSay(Round.Call call) {
        return call.concerns().stream().map(RoundWords::sentence).collect(Collectors.joining(" "));
    }

    /** The first of a concern's values names the machine, which who is rung knows; the last may be when it is ready. */
    private static String sentence(Concern concern) {
        List<String> values = concern.values();
        String last = values.get(values.size() - 1);
        return switch (concern.kind()) {
            case PROMISE_MISSED ->
                last.isEmpty()
                        ? Words.say("round.say_late_until_unknown", values.get(1))
                        : Words.say("round.say_late", values.get(1), last);
            case PROMISE_IN_DANGER -> Words.say("round.say_in_danger", values.get(1));
            case NOT_TO_BE_RIDDEN -> Words.say("round.say_not_to_be_ridden", values.get(1));
            case OWNER_TO_ASK -> Words.say("round.say_word_awaited", values.get(1));
            case FIX_TO_ASK -> Words.say("round.say_fix", values.get(1));
            case OWNER_TO_RING -> Words.say("round.say_done");
            default -> throw new IllegalArgumentException("nobody is rung about " + concern.kind());
        };
    }

    /** What was said to the owner, and what they said, so far. */
    public static List<String> said(Day day, Visit visit) {
        List<String> said = new ArrayList<>();
        visit.promise().ifPresent(promise -> said.add(promised(day, promise)));
        lastWord(visit).ifPresent(word -> said.add(word(day, word)));
        return said;
    }

    private static String promised(Day day, Promise promise) {
        String told = Words.say(
                "round.promised",
                promise.to(),
                Clocks.sayTime(day, promise.saidAt()),
                day.nameOf(promise.by()),
                Clocks.sayTime(day, promise.at()));
        return promise.why().isEmpty() ? told : Words.say("round.promised_why", told, promise.why());
    }

    private static Optional<OwnersWord> lastWord(Visit visit) {
        return visit.findings().stream()
                .flatMap(finding -> finding.word().stream())
                .max(Comparator.comparing(OwnersWord::at));
    }

    private static String word(Day day, OwnersWord word) {
        return Words.say(
                "finding.word." + word.answer(), word.of(), day.nameOf(word.by()), Clocks.sayTime(day, word.at()));
    }
}
