package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.board.Earlier;
import org.shedboard.day.Act;
import org.shedboard.day.AsSeen;
import org.shedboard.day.Outcome;
import org.shedboard.day.Refusal;
import org.shedboard.files.Seed;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Visit;
import org.shedboard.testing.Records;

/** Two terminals of one shop, each deciding upon what it saw. */
@Tag("records")
class ForestalledTest {
    private static final Optional<LocalDateTime> MORNING = Optional.of(LocalDateTime.parse(CommandRoom.MORNING));

    @TempDir
    private Path home;

    private Workshop here;
    private Workshop there;
    private AsSeen seen;
    private Visit seven;

    @BeforeEach
    void open() {
        Workshop.make(Records.at(home), Seed.catalogue(), Seed.shop(Seed.catalogue()));
        here = Workshop.open(Records.at(home), "board", MORNING);
        there = Workshop.open(Records.at(home), "board", MORNING);
        seen = here.seen();
        seven = seen.day().findByTag(7).orElseThrow();
    }

    @AfterEach
    void close() {
        there.close();
        here.close();
    }

    private Act promise(int hours, String to) {
        return new Act.SayPromise(seven.id(), here.now().plus(Duration.ofHours(hours)), "P1", to, "parts", false);
    }

    private Outcome upon(AsSeen day, Act act) {
        return here.carryOut(act, "P1", Optional.empty(), Optional.empty(), Optional.of(day));
    }

    private static Refusal refusal(Outcome outcome) {
        return assertInstanceOf(Outcome.Refused.class, outcome).refusal();
    }

    private String promised() {
        return here.day().expectVisit(seven.id()).promise().orElseThrow().to();
    }

    @Test
    void what_was_decided_elsewhere_first_stands_and_who_comes_second_is_told_who_and_what() {
        Quads.expectDone(there.carryOut(promise(5, "Theirs"), "P2"));
        Act mine = promise(6, "Mine");
        Refusal refusal = refusal(upon(seen, mine));
        assertEquals(new Refusal("overtaken", List.of()), refusal);
        assertEquals("Theirs", promised());
        Earlier earlier = here.earlier(seen, mine, refusal).orElseThrow();
        assertEquals("P2", earlier.who());
        assertEquals("SayPromise", earlier.act());
        assertEquals(Optional.of(seven.id()), earlier.visitId());
        assertEquals(Optional.empty(), earlier.machine());
        Quads.expectDone(upon(here.seen(), mine));
        assertEquals("Mine", promised());
    }

    @Test
    void the_decision_is_told_and_not_what_else_they_did_to_the_machine_afterwards() {
        Quads.expectDone(there.carryOut(promise(5, "Theirs"), "P2"));
        String line = seven.lines().get(0).id();
        Quads.expectDone(there.carryOut(new Act.AgreeHours(seven.id(), line, 77), "P3"));
        Act mine = promise(6, "Mine");
        Earlier earlier = here.earlier(seen, mine, refusal(upon(seen, mine))).orElseThrow();
        assertEquals("SayPromise", earlier.act());
        assertEquals("P2", earlier.who());
    }

    @Test
    void ones_own_earlier_decision_is_no_surprise() {
        Quads.expectDone(upon(seen, promise(5, "First")));
        Quads.expectDone(upon(seen, promise(6, "Second")));
        assertEquals("Second", promised());
    }

    @Test
    void a_decision_about_something_else_is_none_of_this() {
        String line = seven.lines().get(0).id();
        Quads.expectDone(there.carryOut(new Act.AgreeHours(seven.id(), line, 77), "P2"));
        Quads.expectDone(upon(seen, promise(6, "Mine")));
    }

    @Test
    void what_cannot_be_any_more_is_refused_with_who_and_what_came_first() {
        Act hold = new Act.HoldVisit(seven.id(), Hold.Reason.PARTS, "boot", Optional.empty());
        Quads.expectDone(there.carryOut(hold, "P3"));
        Refusal refusal = refusal(upon(seen, hold));
        assertTrue(!refusal.name().equals("overtaken"), refusal::name);
        Earlier earlier = here.earlier(seen, hold, refusal).orElseThrow();
        assertEquals("P3", earlier.who());
        assertEquals("HoldVisit", earlier.act());
    }

    @Test
    void a_refusal_that_nobody_else_has_brought_about_names_nobody() {
        Act release = new Act.Release(seven.id());
        assertEquals(Optional.empty(), here.earlier(seen, release, refusal(upon(seen, release))));
    }

    @Test
    void what_has_no_id_of_its_own_is_told_by_what_was_done() {
        Act theirs = new Act.CheckHoist(new Act.OpenDay.Checked("H1", "P2", Optional.of("hose")));
        Quads.expectDone(there.carryOut(theirs, "P2"));
        Act mine = new Act.CheckHoist(new Act.OpenDay.Checked("H1", "P1", Optional.of("chain")));
        Refusal refusal = refusal(upon(seen, mine));
        assertEquals("overtaken", refusal.name());
        assertEquals(
                "CheckHoist", here.earlier(seen, mine, refusal).orElseThrow().act());
    }
}
