package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Beginning;
import org.shedboard.day.Day;
import org.shedboard.day.FixOffer;
import org.shedboard.day.Morning;
import org.shedboard.day.Outcome;
import org.shedboard.day.Outlook;
import org.shedboard.day.Planning;
import org.shedboard.day.Quoting;
import org.shedboard.day.Setup;
import org.shedboard.day.WhatIf;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;
import org.shedboard.pack.search.Packer;
import org.shedboard.register.History;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Visit;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.SpanTally;

/** Somebody at the keys of the demonstration day: effects are carried out at once and in memory, and reported back. */
final class FakeShell {
    private static final Catalogue CATALOGUE = Seed.catalogue();
    private static final Setup SETUP = Seed.shop(CATALOGUE);
    private static final Day MORNING =
            Beginning.of(CATALOGUE, SETUP, LocalDate.EPOCH).day();

    /** People press keys further apart than a bounce. */
    private static final int MILLIS_BETWEEN_KEYS = 400;

    private Day day;
    private Instant now;
    private Instant pressed = Instant.EPOCH.plusSeconds(60);
    private Board board;
    final List<Effect> effects = new ArrayList<>();

    private FakeShell(Day day, Instant now) {
        this.day = day;
        this.now = now;
        this.board = Board.starting(day.zone());
        read();
    }

    /** The demonstration as it opens. */
    static FakeShell demonstration() {
        Morning morning = SETUP.morning().orElseThrow();
        return new FakeShell(
                MORNING,
                morning.date().atTime(morning.opensAt()).atZone(MORNING.zone()).toInstant());
    }

    /** The demonstration's shop on a day on which nothing has happened yet. */
    static FakeShell unopened() {
        Setup bare = new Setup(SETUP.shop(), SETUP.owners(), SETUP.machines(), List.of(), Optional.empty());
        LocalDate wednesday = LocalDate.of(2026, 5, 13);
        Day day = Beginning.of(CATALOGUE, bare, wednesday).day();
        return new FakeShell(day, wednesday.atTime(6, 50).atZone(day.zone()).toInstant());
    }

    /** Marnie is on the plug of a machine of 2014, the last year of one washer. */
    static FakeShell onThePlug() {
        FakeShell shell = demonstration();
        shell.types("tashenfold hauler")
                .press(Key.ENTER)
                .types("o")
                .press(Key.ENTER)
                .types("0")
                .press(Key.ENTER);
        String visit = shell.visitOf("M54").id();
        for (String task : List.of("in-underside", "raise", "inspect-underside", "drain-oil")) {
            shell.does(new Act.Start("P1", visit, task, Optional.empty()));
            shell.does(new Act.Finish("P1", visit, task, Optional.of(Mark.GOOD)));
        }
        shell.does(new Act.Start("P1", visit, "oil-plug", Optional.empty()));
        return shell;
    }

    Board board() {
        return board;
    }

    Day day() {
        return day;
    }

    Instant now() {
        return now;
    }

    Visit visitOf(String machineId) {
        return day.visits().stream()
                .filter(visit -> visit.machineId().equals(machineId))
                .reduce((one, other) -> other)
                .orElseThrow();
    }

    /** Types the characters of the text one by one. */
    FakeShell types(String text) {
        text.chars().forEach(character -> press(Key.of((char) character)));
        return this;
    }

    FakeShell press(Key... keys) {
        for (Key key : keys) {
            pressAfter(MILLIS_BETWEEN_KEYS, key);
        }
        return this;
    }

    FakeShell pressAfter(int millis, Key key) {
        pressed = pressed.plusMillis(millis);
        tell(new Msg.Pressed(key, pressed));
        return this;
    }

    FakeShell minutesPass(int minutes) {
        now = now.plusSeconds(60L * minutes);
        read();
        return this;
    }

    void tell(Msg msg) {
        Turn turn = Update.of(board, msg);
        board = turn.board();
        turn.effects().forEach(this::carryOut);
    }

    private void carryOut(Effect effect) {
        effects.add(effect);
        if (effect instanceof Effect.CarryOut carry) {
            act(carry.act(), true);
        } else if (effect instanceof Effect.TryOut tried) {
            tell(new Msg.Tried(tried.whatIf(), tried.whatIf().on(Outlook.of(day, now))));
        } else if (effect instanceof Effect.Keep keep) {
            keep(keep);
        } else if (effect instanceof Effect.AskFix ask) {
            tell(new Msg.FixOffered(FixOffer.of(Outlook.of(day, now), ask.visitId(), ask.pointId())));
        } else if (effect instanceof Effect.AskQuote ask) {
            Quoting quoting = Quoting.of(day, ask.wanted(), 80, now);
            tell(new Msg.Quoted(quoting.atOnce(), ask.round()));
            tell(new Msg.Quoted(quoting.whole(Packer::pack), ask.round()));
        } else if (effect instanceof Effect.ReadHistory read) {
            tell(new Msg.HistoryRead(history(read.machineId())));
        }
    }

    /** As if the machine had been here only today. */
    private History history(String machineId) {
        return new History(
                machineId,
                day.visits().stream()
                        .filter(visit -> visit.machineId().equals(machineId))
                        .map(visit -> new History.Visited(visit, visit.tag()))
                        .toList());
    }

    /** Something happens at another terminal. */
    void does(Act act) {
        act(act, false);
    }

    private void act(Act act, boolean isHere) {
        Outcome outcome = Planning.carryOut(day, act, now);
        if (outcome instanceof Outcome.Refused refused) {
            tell(new Msg.NotDone(act, refused.refusal()));
            return;
        }
        Outcome.Done done = (Outcome.Done) outcome;
        day = done.day();
        read();
        tell(new Msg.Saved(act, done.subject(), Optional.of(done.trace()).filter(trace -> isHere)));
    }

    private void keep(Effect.Keep keep) {
        WhatIf whatIf = keep.whatIf();
        Outcome outcome = whatIf.postedAs(keep.shown()).carryOut(day, now);
        if (outcome instanceof Outcome.Refused refused) {
            tell(new Msg.NotKept(whatIf, refused.refusal()));
            return;
        }
        Outcome.Done done = (Outcome.Done) outcome;
        day = done.day();
        read();
        tell(new Msg.Kept(whatIf, done.trace()));
    }

    private void read() {
        tell(new Msg.Seen(Outlook.of(day, now), SpanTally.of(Ledger.of(day, now))));
    }

    /** The act that was carried out last. */
    Act lastAct() {
        return effects.stream()
                .filter(Effect.CarryOut.class::isInstance)
                .map(effect -> ((Effect.CarryOut) effect).act())
                .reduce((one, other) -> other)
                .orElseThrow();
    }

    /** Who signed what was carried out last. */
    Optional<Effect.Signed> lastSignature() {
        return effects.stream()
                .filter(Effect.CarryOut.class::isInstance)
                .flatMap(effect -> ((Effect.CarryOut) effect).signature().stream())
                .reduce((one, other) -> other);
    }

    String note() {
        return board.note().map(Note::sentence).orElse("");
    }

    void assertDone() {
        assertTrue(board.note().filter(note -> !note.isRefusal()).isPresent(), note());
        assertEquals(0, board.saving());
    }

    void assertRefused(String sentence) {
        assertEquals(Optional.of(new Note(sentence, true)), board.note());
    }
}
