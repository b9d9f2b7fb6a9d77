package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shedboard.board.Key;
import org.shedboard.day.Act;
import org.shedboard.grid.Size;
import org.shedboard.hours.Activity;
import org.shedboard.shop.Person;
import org.shedboard.words.Words;

/** Work besides machines, as the crew's page shows it. */
class CrewViewTest {
    private static final Size WIDE = new Size(120, 36);

    private final Rehearsal rehearsal = Rehearsal.atTheDemonstration();
    private final Person person = rehearsal.day().shop().people().get(0);

    private String row() {
        List<String> lines = rehearsal.press(Key.BACK_TAB).drawn(WIDE).lines();
        return lines.stream()
                .filter(line -> line.contains(person.name()))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(Activity.OtherWork.Kind.class)
    void somebody_on_other_work_is_said_to_be_on_it(Activity.OtherWork.Kind kind) {
        rehearsal.done(new Act.DoOther(person.id(), kind));
        String row = row();
        assertTrue(row.contains(Words.say("otherWork." + kind)), row);
    }

    @ParameterizedTest
    @EnumSource(Activity.OtherWork.Kind.class)
    void other_work_that_is_planned_has_its_first_letter_on_the_axis(Activity.OtherWork.Kind kind) {
        rehearsal.done(
                new Act.PlanErrand(person.id(), kind, rehearsal.outlook().at().plusSeconds(5 * 3600), 60, ""));
        String letter = Words.say("otherWork." + kind).substring(0, 1).toLowerCase(Locale.ROOT);
        String axis = row().substring(48);
        assertTrue(axis.contains(letter), axis);
    }
}
