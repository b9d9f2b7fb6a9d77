package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.day.Act;
import org.shedboard.grid.Size;
import org.shedboard.hours.Activity;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** Nothing is told by colour alone: what differs in how it looks differs in what it says, in plain letters too. */
class StatesInWordsTest {
    private static final Size USUAL = new Size(80, 24);

    /** What happens to the machine with tag 7, that somebody is on. */
    static Stream<Arguments> happenings() {
        Visit visit = Rehearsal.atTheDemonstration().day().findByTag(7).orElseThrow();
        Task task = visit.tasks().stream()
                .filter(each -> each.progress().isRunning())
                .findFirst()
                .orElseThrow();
        String person = task.progress().person().orElseThrow();
        return Stream.of(
                Arguments.of("paused", new Act.Pause(visit.id(), task.id())),
                Arguments.of("finished", new Act.Finish(person, visit.id(), task.id(), Optional.of(Mark.GOOD))),
                Arguments.of("held", new Act.HoldVisit(visit.id(), Hold.Reason.OWNERS_WORD, "", Optional.empty())),
                Arguments.of("left for a break", new Act.TakeBreak(person, Activity.Break.Kind.REST)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("happenings")
    void a_board_in_another_state_says_so(String what, Act act) {
        Rehearsal rehearsal = Rehearsal.atTheDemonstration();
        List<String> before = body(rehearsal);
        assertNotEquals(before, body(rehearsal.done(act)), what);
    }

    /** Without the foot, where the sentence of what was done stands. */
    private static List<String> body(Rehearsal rehearsal) {
        return rehearsal.drawn(USUAL).toAscii().lines().subList(0, 18);
    }
}
