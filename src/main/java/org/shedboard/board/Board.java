package org.shedboard.board;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.day.Day;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Outlook;
import org.shedboard.day.Posted;
import org.shedboard.learn.Drift;
import org.shedboard.pack.story.Difference;
import org.shedboard.register.Finder;
import org.shedboard.register.History;
import org.shedboard.tally.LookBack;
import org.shedboard.tally.SpanTally;

/**
 * The whole state of the full screen.
 *
 * @param zone the zone of the machine it runs on, for a shop that is yet to be set up
 * @param seen the day as last read; empty before the first reading
 * @param behind the screens that Escape leads back to, the nearest last
 * @param saving how many acts are on their way to the database
 * @param better a better plan than the posted one, while it is on offer
 * @param read what was read besides, to be looked at
 * @param draft a machine half taken in when the form was left
 * @param lastKey when the last key was pressed
 * @param pasting whether what comes was pasted, not typed
 * @param sight which part of time the places and the crew are shown in
 */
public record Board(
        ZoneId zone,
        Optional<Seen> seen,
        Screen screen,
        List<Screen> behind,
        Optional<Overlay> overlay,
        Optional<Note> note,
        int saving,
        Optional<Better> better,
        Read read,
        Optional<TakeInForm> draft,
        Instant lastKey,
        boolean pasting,
        Sight sight) {
    /** The day as read, with its tally, and how sure knock-off is once that is worked out. */
    public record Seen(Outlook outlook, SpanTally tally, Optional<KnockOffChance> knockOff) {}

    /**
     * The hours of the days last asked for, the month last looked back upon, and what a machine went through.
     *
     * @param finder made of books that may be older than the day
     * @param drifts what runs away from what is said of it, as it was worked out last
     */
    public record Read(
            Optional<SpanTally> hours,
            Optional<LookBack> lookBack,
            Optional<History> history,
            Optional<Finder> finder,
            List<Drift> drifts) {
        static final Read NOTHING =
                new Read(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());

        Read with(SpanTally next) {
            return new Read(Optional.of(next), lookBack, history, finder, drifts);
        }

        Read with(LookBack next) {
            return new Read(hours, Optional.of(next), history, finder, drifts);
        }

        Read with(History next) {
            return new Read(hours, lookBack, Optional.of(next), finder, drifts);
        }

        Read with(Finder next) {
            return new Read(hours, lookBack, history, Optional.of(next), drifts);
        }

        Read with(List<Drift> next) {
            return new Read(hours, lookBack, history, finder, next);
        }
    }

    /** A better plan, and what it changes of the posted one. */
    public record Better(Posted plan, Difference difference) {}

    public Board {
        behind = List.copyOf(behind);
    }

    /** The board before anything is known. */
    public static Board starting(ZoneId zone) {
        return new Board(
                zone,
                Optional.empty(),
                new Screen.Loading(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                0,
                Optional.empty(),
                Read.NOTHING,
                Optional.empty(),
                Instant.EPOCH,
                false,
                Sight.USUAL);
    }

    public Optional<Outlook> outlook() {
        return seen.map(Seen::outlook);
    }

    public Outlook expectOutlook() {
        return outlook().orElseThrow(() -> new IllegalStateException("the day has not been read yet"));
    }

    public Day expectDay() {
        return expectOutlook().day();
    }

    /** Who is taken to act where nobody is named: whoever opened the day, else the first of the people. */
    public String who() {
        return expectDay().inCharge();
    }

    Board with(Screen next) {
        return new Board(zone, seen, next, behind, overlay, note, saving, better, read, draft, lastKey, pasting, sight);
    }

    Board withSeen(Seen next) {
        return new Board(
                zone,
                Optional.of(next),
                screen,
                behind,
                overlay,
                note,
                saving,
                better,
                read,
                draft,
                lastKey,
                pasting,
                sight);
    }

    /** On to another screen, from which Escape leads back here. */
    Board on(Screen next) {
        List<Screen> back = new ArrayList<>(behind);
        back.add(screen);
        return new Board(
                zone, seen, next, back, Optional.empty(), note, saving, better, read, draft, lastKey, pasting, sight);
    }

    /** Back to the screen before this one; to the bay board where there is none. */
    Board back() {
        if (behind.isEmpty()) {
            return with(seen.isPresent() ? Screen.Places.START : screen).without();
        }
        Screen before = behind.get(behind.size() - 1);
        List<Screen> rest = behind.subList(0, behind.size() - 1);
        return new Board(
                zone, seen, before, rest, Optional.empty(), note, saving, better, read, draft, lastKey, pasting, sight);
    }

    /** On to a screen that nothing leads back from. */
    Board onlyOn(Screen next) {
        return new Board(
                zone,
                seen,
                next,
                List.of(),
                Optional.empty(),
                note,
                saving,
                better,
                read,
                draft,
                lastKey,
                pasting,
                sight);
    }

    Board asking(Overlay question) {
        return new Board(
                zone,
                seen,
                screen,
                behind,
                Optional.of(question),
                note,
                saving,
                better,
                read,
                draft,
                lastKey,
                pasting,
                sight);
    }

    Board without() {
        return new Board(
                zone,
                seen,
                screen,
                behind,
                Optional.empty(),
                note,
                saving,
                better,
                read,
                draft,
                lastKey,
                pasting,
                sight);
    }

    Board noting(Note next) {
        return new Board(
                zone,
                seen,
                screen,
                behind,
                overlay,
                Optional.of(next),
                saving,
                better,
                read,
                draft,
                lastKey,
                pasting,
                sight);
    }

    Board withoutNote() {
        return new Board(
                zone,
                seen,
                screen,
                behind,
                overlay,
                Optional.empty(),
                saving,
                better,
                read,
                draft,
                lastKey,
                pasting,
                sight);
    }

    Board saving(int change) {
        int count = Math.max(0, saving + change);
        return new Board(
                zone, seen, screen, behind, overlay, note, count, better, read, draft, lastKey, pasting, sight);
    }

    Board offering(Optional<Better> next) {
        return new Board(zone, seen, screen, behind, overlay, note, saving, next, read, draft, lastKey, pasting, sight);
    }

    Board withHours(SpanTally tally) {
        return withRead(read.with(tally));
    }

    Board withLookBack(LookBack back) {
        return withRead(read.with(back));
    }

    Board withDrifts(List<Drift> drifts) {
        return withRead(read.with(drifts));
    }

    Board withHistory(History history) {
        return withRead(read.with(history));
    }

    /** With what finds machines in the books as they are; made only when they have changed. */
    Board withFinder() {
        return read.finder().filter(finder -> Found.isOf(finder, expectDay())).isPresent()
                ? this
                : withRead(read.with(Found.finder(expectDay())));
    }

    /** What finds machines in the books as they are. */
    public Finder finder() {
        return withFinder().read.finder().orElseThrow();
    }

    /** What the machine that is shown went through; empty while it is being read. */
    public Optional<History> historyOf(String machineId) {
        return read.history().filter(history -> history.machineId().equals(machineId));
    }

    private Board withRead(Read next) {
        return new Board(
                zone, seen, screen, behind, overlay, note, saving, better, next, draft, lastKey, pasting, sight);
    }

    /** The month a screen shows; empty while it is being read. */
    public Optional<LookBack> lookBackOf(Screen.Hours shown) {
        return read.lookBack().filter(back -> back.tally().ledger().from().equals(shown.from()));
    }

    /** The hours a screen shows; empty while they are being read. */
    public Optional<SpanTally> hoursOf(Screen.Hours shown) {
        return Stream.concat(seen.map(Seen::tally).stream(), read.hours().stream())
                .filter(tally -> tally.ledger().from().equals(shown.from())
                        && tally.ledger().until().equals(shown.until()))
                .findFirst();
    }

    Board keeping(Optional<TakeInForm> form) {
        return new Board(
                zone, seen, screen, behind, overlay, note, saving, better, read, form, lastKey, pasting, sight);
    }

    Board pressedAt(Instant at) {
        return new Board(zone, seen, screen, behind, overlay, note, saving, better, read, draft, at, pasting, sight);
    }

    Board pasting(boolean now) {
        return new Board(zone, seen, screen, behind, overlay, note, saving, better, read, draft, lastKey, now, sight);
    }

    Board seeing(Sight next) {
        return new Board(
                zone, seen, screen, behind, overlay, note, saving, better, read, draft, lastKey, pasting, next);
    }
}
