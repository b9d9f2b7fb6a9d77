package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.KnockOffChance;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.words.Words;

/** How sure knock-off is and on which machines it hangs, in as many words as there is room for. */
final class KnockOffLine {
    /** Chances, in a hundred, below which knock-off is in danger, and at risk; as for promises. */
    private static final int IN_DANGER = 50;

    private static final int AT_RISK = 80;

    private final Day day;
    private final KnockOffChance chance;

    KnockOffLine(Day day, KnockOffChance chance) {
        this.day = day;
        this.chance = chance;
    }

    /** The fullest wording that fits; machines that do not fit are left away, the least first. */
    String text(int width) {
        return wordings().stream()
                .filter(text -> TextWidth.of(text) <= width)
                .findFirst()
                .orElse(Words.say("knock_off.short", time(), chance.chance()));
    }

    private List<String> wordings() {
        List<String> names = deciders();
        List<String> texts = new ArrayList<>();
        for (int count = names.size(); count > 0; count--) {
            String some = String.join(", ", names.subList(0, count));
            texts.add(Words.say("knock_off.hangs_on", time(), chance.chance(), some));
            texts.add(Words.say("knock_off.hangs_on_short", time(), chance.chance(), some));
        }
        texts.add(Words.say("knock_off", time(), chance.chance()));
        return texts;
    }

    /** A machine that has gone since is left out. */
    private List<String> deciders() {
        return chance.deciders().stream()
                .map(KnockOffChance.Decider::visitId)
                .distinct()
                .flatMap(id -> day.findVisit(id).stream())
                .map(visit -> PlaceStatus.shortNameOf(day, visit))
                .toList();
    }

    private String time() {
        return Clocks.sayTime(day, chance.at());
    }

    Style style() {
        if (chance.chance() < IN_DANGER) {
            return Style.DANGER;
        }
        return chance.chance() < AT_RISK ? Style.LATE : Style.NORMAL;
    }
}
