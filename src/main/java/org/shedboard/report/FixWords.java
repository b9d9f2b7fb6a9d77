package org.shedboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.shedboard.day.Clocks;
import org.shedboard.day.Cover;
import org.shedboard.day.Day;
import org.shedboard.day.FixOffer;
import org.shedboard.shop.Part;
import org.shedboard.words.Words;

/** Says what it takes to put a fix right, and what that does to the day. */
public final class FixWords {
    private final Day day;
    private final FixOffer offer;

    private FixWords(Day day, FixOffer offer) {
        this.day = day;
        this.offer = offer;
    }

    /** A line for each thing to know before the owner is asked. */
    public static List<String> of(Day day, FixOffer offer) {
        return new FixWords(day, offer).lines();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say(
                "fix.work",
                offer.work().name(),
                offer.range().likely(),
                offer.range().safe()));
        if (!offer.work().parts().isEmpty()) {
            lines.add(Words.say("fix.parts", parts(offer.work().lineParts())));
        }
        offer.shortParts().forEach(cover -> lines.add(shortPart(cover)));
        lines.add(ready());
        offer.promises().stream().filter(FixOffer.Kept::isChanged).forEach(kept -> lines.add(kept(kept)));
        long same = offer.promises().stream().filter(kept -> !kept.isChanged()).count();
        if (same > 0) {
            lines.add(Words.say("fix.unchanged", same));
        }
        return lines;
    }

    private String shortPart(Cover cover) {
        String item = day.books().catalogue().nameOfItem(cover.itemId());
        String from = cover.from().map(at -> Clocks.sayTime(day, at)).orElse("");
        return Words.say(cover.state() == Cover.State.ON_ORDER ? "fix.part_on_order" : "fix.part_short", item, from);
    }

    private static String parts(List<Part> parts) {
        return parts.stream().map(part -> part.quantity() + " " + part.name()).collect(Collectors.joining(", "));
    }

    private String ready() {
        if (offer.ready().isEmpty()) {
            return Words.say("fix.not_today");
        }
        String with = Clocks.sayTime(day, offer.ready().get());
        return offer.readyBefore()
                .map(before -> Words.say("fix.ready", with, Clocks.sayTime(day, before)))
                .orElse(Words.say("fix.ready_with", with));
    }

    private String kept(FixOffer.Kept kept) {
        String said = Words.say(
                "fix.promise",
                kept.name(),
                Clocks.sayTime(day, kept.promise()),
                chance(kept.before()),
                chance(kept.after()));
        return kept.isEndangered() ? Words.say("fix.endangered", said) : said;
    }

    private static String chance(OptionalInt chance) {
        return chance.isPresent() ? chance.getAsInt() + "%" : Words.say("fix.not_planned");
    }
}
