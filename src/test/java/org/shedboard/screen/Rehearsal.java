package org.shedboard.screen;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.shedboard.board.Board;
import org.shedboard.board.Effect;
import org.shedboard.board.Key;
import org.shedboard.board.Msg;
import org.shedboard.board.Turn;
import org.shedboard.board.Update;
import org.shedboard.day.Act;
import org.shedboard.day.Acts;
import org.shedboard.day.Beginning;
import org.shedboard.day.Books;
import org.shedboard.day.Change;
import org.shedboard.day.Day;
import org.shedboard.day.FixOffer;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Morning;
import org.shedboard.day.Outcome;
import org.shedboard.day.Outlook;
import org.shedboard.day.Planning;
import org.shedboard.day.Quoting;
import org.shedboard.day.Setup;
import org.shedboard.day.WhatIf;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;
import org.shedboard.forecast.Experience;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.hours.ClockEntry;
import org.shedboard.learn.Lesson;
import org.shedboard.pack.search.Packer;
import org.shedboard.register.History;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Visit;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.LookBack;
import org.shedboard.tally.SpanTally;

/**
 * The full screen without a terminal, records or a clock: keys become messages, effects are carried out on the day in memory, and
 * their answers become messages again. Time stands until it is moved.
 */
final class Rehearsal {
    private static final ZoneId ZONE = ZoneId.of("Australia/Brisbane");
    private static final LocalDate DATE = LocalDate.of(2026, 5, 12);
    private static final LocalTime DAYBREAK = LocalTime.of(6, 30);
    private static final int CHANCE_TO_PROMISE = 80;
    private static final int SELDOM = 12;
    private static final Catalogue CATALOGUE = Seed.catalogue();
    private static final Setup SETUP = Seed.shop(CATALOGUE);
    private static final Beginning BEGINNING = Beginning.of(CATALOGUE, SETUP, DATE);
    private static final Day MORNING = BEGINNING.day();
    private static final Day BEFORE_OPENING =
            Beginning.of(CATALOGUE, untilDaybreak(), DATE).day();

    private Optional<Day> day = Optional.empty();
    private Instant now = DATE.atTime(9, 40).atZone(ZONE).toInstant();
    private Board board = Board.starting(ZONE);
    private boolean saves = true;
    private boolean packs = true;
    /** How sure knock-off is, and the best quote, are worked out once in so many times: nothing else takes so long. */
    private int slowOnceIn = 1;

    private int slowAsked;
    private int presses;

    private Rehearsal() {}

    /** Before anything is read. */
    static Rehearsal starting() {
        return new Rehearsal();
    }

    /** A home without a shop. */
    static Rehearsal withoutShop() {
        return new Rehearsal().told(new Msg.NoShop());
    }

    /** The demonstration at 09:40. */
    static Rehearsal atTheDemonstration() {
        Rehearsal rehearsal = new Rehearsal();
        rehearsal.day = Optional.of(MORNING);
        return rehearsal.seen();
    }

    /** The demonstration at half past six, with two machines standing over from the day before. */
    static Rehearsal beforeOpening() {
        Rehearsal rehearsal = new Rehearsal();
        rehearsal.day = Optional.of(BEFORE_OPENING);
        rehearsal.now = DATE.atTime(DAYBREAK).atZone(ZONE).toInstant();
        return rehearsal.seen();
    }

    /** Any other day at this moment. */
    static Rehearsal of(Day any, Instant now) {
        Rehearsal rehearsal = new Rehearsal();
        rehearsal.board = Board.starting(any.zone());
        rehearsal.day = Optional.of(any);
        rehearsal.now = now;
        rehearsal.slowOnceIn = SELDOM;
        return rehearsal.seen();
    }

    private static Setup untilDaybreak() {
        Instant until = DATE.atTime(DAYBREAK).atZone(ZONE).toInstant();
        Morning whole = SETUP.morning().orElseThrow();
        Morning before = new Morning(
                DATE,
                DAYBREAK,
                whole.acts().stream().filter(act -> act.at().isBefore(until)).toList());
        return new Setup(SETUP.shop(), SETUP.owners(), SETUP.machines(), SETUP.past(), Optional.of(before));
    }

    /** From here on at a terminal that only looks. */
    Rehearsal lookingOnly() {
        board = board.lookingOnly();
        return this;
    }

    Day day() {
        return day.orElseThrow();
    }

    Board board() {
        return board;
    }

    Outlook outlook() {
        return board.expectOutlook();
    }

    Grid drawn(Size size) {
        return View.of(board, size);
    }

    /** From now on nothing asked of the records is answered. */
    Rehearsal withSlowRecords() {
        saves = false;
        return this;
    }

    /** From now on no search comes to an end. */
    Rehearsal withSlowSearch() {
        packs = false;
        return this;
    }

    Rehearsal press(Key... keys) {
        for (Key key : keys) {
            presses++;
            told(new Msg.Pressed(key, Instant.EPOCH.plusSeconds(presses)));
        }
        return this;
    }

    Rehearsal type(String text) {
        for (char character : text.toCharArray()) {
            press(Key.of(character));
        }
        return this;
    }

    Rehearsal told(Msg msg) {
        Turn turn = Update.of(board, msg);
        board = turn.board();
        turn.effects().forEach(this::perform);
        return this;
    }

    /** Something is done at another terminal; it must be possible. */
    Rehearsal done(Act act) {
        Outcome outcome = Planning.carryOut(day(), act, now);
        if (!(outcome instanceof Outcome.Done done)) {
            throw new IllegalStateException(act + " is refused: " + outcome);
        }
        day = Optional.of(done.day());
        return seen();
    }

    /** Machines are booked at another terminal; the plan is not moved along. */
    Rehearsal booked(List<Act.TakeIn> bookings) {
        for (Act booking : bookings) {
            day = Optional.of(((Outcome.Done) Acts.apply(day(), booking, now)).day());
        }
        return seen();
    }

    /** More was finished before today than the demonstration tells of. */
    Rehearsal finished(List<Lesson> more) {
        Books books = day().books();
        List<Lesson> all = new ArrayList<>(books.experience().lessons());
        all.addAll(more);
        all.sort(Comparator.comparing(lesson -> lesson.circumstances().date()));
        Experience experience = Experience.of(books.catalogue(), books.shop().people(), all, day().date());
        day = Optional.of(day().with(books.with(books.foresight().with(experience))));
        return seen().told(new Msg.DriftsSeen(experience.drifts()));
    }

    /** Something is not as it should be with the backups or the clock. */
    Rehearsal warned(String... sentences) {
        return told(new Msg.Warned(List.of(sentences)));
    }

    /** It is so much later, and the board has seen it; at midnight it is the next day. */
    Rehearsal later(int minutes) {
        now = now.plusSeconds(60L * minutes);
        while (!LocalDate.ofInstant(now, day().zone()).equals(day().date())) {
            day = Optional.of(dayAfter(day()));
        }
        return seen();
    }

    /** It is the next morning, and nobody has closed the day before. */
    Rehearsal nextMorning() {
        day = Optional.of(dayAfter(day()));
        now = day().date().atTime(6, 50).atZone(day().zone()).toInstant();
        return seen();
    }

    /** What the records have of the day after. */
    private static Day dayAfter(Day before) {
        boolean isLeftOpen = before.isOpened() && !before.isClosed();
        return new Day(
                before.books(),
                before.date().plusDays(1),
                Optional.empty(),
                before.visits().stream()
                        .filter(visit -> visit.state().isOpen() || visit.state().isHere())
                        .toList(),
                before.entries().stream().filter(ClockEntry::isOpen).toList(),
                before.errands(),
                isLeftOpen ? Optional.of(before.date()) : before.unclosed(),
                before.posted(),
                before.nextNumber());
    }

    /** The shop plans by another catalogue, against which its past is measured anew. */
    Rehearsal measuredBy(UnaryOperator<Catalogue> change) {
        Books books = day().books();
        Books other = new Books(
                books.shop(),
                change.apply(books.catalogue()),
                books.owners(),
                books.machines(),
                books.hoursRules(),
                books.signers(),
                books.register(),
                books.shelf(),
                books.foresight());
        List<Visit> visits = BEGINNING.changes().stream()
                .filter(Change.VisitSaved.class::isInstance)
                .map(each -> ((Change.VisitSaved) each).visit())
                .toList();
        List<ClockEntry> entries = BEGINNING.changes().stream()
                .filter(Change.EntrySaved.class::isInstance)
                .map(each -> ((Change.EntrySaved) each).entry())
                .toList();
        day = Optional.of(day().with(other.learningFrom(visits, entries, now)));
        return seen();
    }

    private Rehearsal seen() {
        Outlook outlook = Outlook.of(day(), now);
        told(new Msg.Seen(outlook, SpanTally.of(Ledger.of(day(), now))));
        return isTimeForSlow() ? told(new Msg.KnockOffSeen(KnockOffChance.of(outlook))) : this;
    }

    private boolean isTimeForSlow() {
        slowAsked++;
        return slowAsked % slowOnceIn == 0;
    }

    private void perform(Effect effect) {
        if (!saves) {
            return;
        }
        if (effect instanceof Effect.CarryOut carry) {
            carryOut(carry.act());
        } else if (effect instanceof Effect.TryOut tried) {
            told(new Msg.Tried(tried.whatIf(), tried.whatIf().on(Outlook.of(day(), now))));
        } else if (effect instanceof Effect.Keep keep) {
            keep(keep);
        } else if (effect instanceof Effect.AskFix ask) {
            told(new Msg.FixOffered(FixOffer.of(Outlook.of(day(), now), ask.visitId(), ask.pointId())));
        } else if (effect instanceof Effect.AskQuote ask) {
            Quoting quoting = Quoting.of(day(), ask.wanted(), CHANCE_TO_PROMISE, now);
            told(new Msg.Quoted(quoting.atOnce(), ask.round()));
            if (packs && isTimeForSlow()) {
                told(new Msg.Quoted(quoting.whole(Packer::pack), ask.round()));
            }
        } else if (effect instanceof Effect.ReadHours read) {
            told(new Msg.HoursRead(SpanTally.of(ledger(read.from(), read.until()))));
        } else if (effect instanceof Effect.LookBack back) {
            told(new Msg.LookedBack(LookBack.of(ledger(back.from(), back.until()), List.of())));
        } else if (effect instanceof Effect.ReadHistory read) {
            told(new Msg.HistoryRead(history(read.machineId())));
        } else if (effect instanceof Effect.MakeShop make) {
            makeShop(make.shop());
        }
    }

    /** The visits that the demonstration's past tells of, and those of the day. */
    private History history(String machineId) {
        Map<String, Visit> visits = new LinkedHashMap<>();
        BEGINNING.changes().stream()
                .filter(Change.VisitSaved.class::isInstance)
                .map(change -> ((Change.VisitSaved) change).visit())
                .forEach(visit -> visits.put(visit.id(), visit));
        day().visits().forEach(visit -> visits.put(visit.id(), visit));
        List<History.Visited> visited = visits.values().stream()
                .filter(visit -> visit.machineId().equals(machineId))
                .sorted(Comparator.comparing((Visit visit) -> visit.intake().arrives())
                        .reversed())
                .map(visit -> new History.Visited(visit, visit.tag()))
                .toList();
        return new History(machineId, visited);
    }

    /** As if nothing were known of other days. */
    private Ledger ledger(LocalDate from, LocalDate until) {
        return new Ledger(
                day().books(),
                from,
                until,
                day().opening().stream().toList(),
                day().visits(),
                List.of(),
                day().entries(),
                now);
    }

    private void carryOut(Act act) {
        Outcome outcome = Planning.carryOut(day(), act, now);
        if (outcome instanceof Outcome.Refused refused) {
            told(new Msg.NotDone(act, refused.refusal()));
            return;
        }
        Outcome.Done done = (Outcome.Done) outcome;
        day = Optional.of(done.day());
        seen();
        told(new Msg.Saved(act, done.subject(), Optional.of(done.trace())));
    }

    private void keep(Effect.Keep keep) {
        WhatIf whatIf = keep.whatIf();
        Outcome outcome = whatIf.postedAs(keep.shown()).carryOut(day(), now);
        if (outcome instanceof Outcome.Refused refused) {
            told(new Msg.NotKept(whatIf, refused.refusal()));
            return;
        }
        Outcome.Done done = (Outcome.Done) outcome;
        day = Optional.of(done.day());
        seen().told(new Msg.Kept(whatIf, done.trace()));
    }

    private void makeShop(Shop shop) {
        Setup own = new Setup(shop, List.of(), List.of(), List.of(), Optional.empty());
        day = Optional.of(Beginning.of(CATALOGUE, own, DATE).day());
        seen();
    }
}
