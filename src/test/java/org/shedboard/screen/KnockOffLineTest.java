package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.day.Day;
import org.shedboard.day.KnockOffChance;
import org.shedboard.grid.Style;
import org.shedboard.shop.Step;
import org.shedboard.shop.Visit;

class KnockOffLineTest {
    private final Rehearsal rehearsal = Rehearsal.atTheDemonstration();
    private final Day day = rehearsal.day();

    private KnockOffChance.Decider decider(OptionalInt tag, Step step) {
        Visit tagged = day.visits().stream()
                .filter(visit -> visit.state().isOpen() && visit.tag().equals(tag))
                .findFirst()
                .orElseThrow();
        return new KnockOffChance.Decider(tagged.id(), step, 10, 1);
    }

    private KnockOffLine line(int chance, KnockOffChance.Decider... deciders) {
        return new KnockOffLine(day, new KnockOffChance(day.instantOf(16 * 60 + 30), chance, 1.5, List.of(deciders)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "60 | knock-off 16:30: 62%, hangs on 9, 12, Thistlewane",
                "41 | knock-off 16:30: 62% (9, 12, Thistlewane)",
                "36 | knock-off 16:30: 62%, hangs on 9, 12",
                "28 | knock-off 16:30: 62% (9, 12)",
                "27 | knock-off 16:30: 62% (9)",
                "20 | knock-off 16:30: 62%"
            })
    void as_many_machines_are_named_as_there_is_room_for(int width, String text) {
        KnockOffLine line = line(
                62,
                decider(OptionalInt.of(9), Step.UNDERSIDE),
                decider(OptionalInt.of(9), Step.TOPSIDE),
                decider(OptionalInt.of(12), Step.WASH),
                decider(OptionalInt.empty(), Step.WASH));
        assertEquals(text, line.text(width));
    }

    @ParameterizedTest
    @CsvSource({"27, knock-off 16:30: 100%", "28, knock-off 16:30: chance 100%"})
    void a_number_is_never_cut(int width, String text) {
        assertEquals(text, line(100).text(width));
    }

    @Test
    void a_machine_that_has_gone_since_is_not_named() {
        KnockOffChance.Decider gone = new KnockOffChance.Decider("V0", Step.WASH, 10, 1);
        assertEquals(
                "knock-off 16:30: 62%, hangs on 12",
                line(62, gone, decider(OptionalInt.of(12), Step.WASH)).text(60));
    }

    @ParameterizedTest
    @CsvSource({"49, DANGER", "50, LATE", "79, LATE", "80, NORMAL"})
    void it_is_told_like_the_chance_of_a_promise(int chance, Style style) {
        assertEquals(style, line(chance).style());
    }
}
