package org.shedboard.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.Seen;
import org.shedboard.board.Earlier;
import org.shedboard.day.Act;
import org.shedboard.day.Acts;
import org.shedboard.day.AsSeen;
import org.shedboard.day.Beginning;
import org.shedboard.day.CatalogueFit;
import org.shedboard.day.Change;
import org.shedboard.day.Day;
import org.shedboard.day.Morning;
import org.shedboard.day.Outcome;
import org.shedboard.day.Planning;
import org.shedboard.day.Refusal;
import org.shedboard.day.Setup;
import org.shedboard.day.Signer;
import org.shedboard.day.Signing;
import org.shedboard.day.WhatIf;
import org.shedboard.estimate.Catalogue;
import org.shedboard.pack.fault.Fault;
import org.shedboard.register.History;
import org.shedboard.register.Measured;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Visit;
import org.shedboard.store.Address;
import org.shedboard.store.Reader;
import org.shedboard.store.Stamp;
import org.shedboard.store.Store;
import org.shedboard.store.Tx;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.LookBack;

/**
 * One shop at work: reads its day from the records, and carries acts out on it, each as one change. An act is always tried on
 * the day as it is in the records at that moment, so that two terminals never overlook each other.
 */
final class Workshop implements AutoCloseable, Seen.Records {
    private final Address address;
    private final Store store;
    private final TerminalName terminal;
    private final Clock clock;
    private final Access access;

    /** Nothing of the hours of some days is read again while the journal has not grown. */
    private record KnownLedger(long journal, Ledger ledger) {}

    private final DayReading days;
    private Optional<KnownLedger> knownLedger = Optional.empty();

    private Workshop(Address address, Store store, TerminalName terminal, Clock clock, Access access) {
        this.address = address;
        this.store = store;
        this.terminal = terminal;
        this.clock = clock;
        this.days = new DayReading(clock);
        this.access = access;
    }

    /**
     * Opens the shop at this address.
     *
     * @param kind what the program is that opens it, for the journal
     * @param at the moment to see it from, in the zone of the shop; only a demonstration can be seen from any but the present
     */
    static Workshop open(Address address, String kind, Optional<LocalDateTime> at) {
        return open(address, kind, at, Access.WORK);
    }

    static Workshop open(Address address, String kind, Optional<LocalDateTime> at, Access access) {
        return open(address, kind, reader -> clockOf(reader, at), access);
    }

    /** @param clock in the zone of the shop */
    static Workshop open(Address address, String kind, Function<Reader, Clock> clock) {
        return open(address, kind, clock, Access.WORK);
    }

    private static Workshop open(Address address, String kind, Function<Reader, Clock> clock, Access access) {
        Store store = access.open(address);
        try {
            return new Workshop(address, store, TerminalName.next(kind), store.read(clock), access);
        } catch (RuntimeException failure) {
            store.close();
            throw failure;
        }
    }

    private static Clock clockOf(Reader reader, Optional<LocalDateTime> at) {
        ZoneId zone = reader.findShop().map(Shop::zone).orElse(ZoneId.systemDefault());
        if (at.isEmpty()) {
            return ShopClock.of(reader, zone);
        }
        if (!ShopClock.isDemonstration(reader)) {
            throw new CannotDo("command.at_only_in_demonstration");
        }
        return ShopClock.startingAt(at.get().atZone(zone).toInstant(), zone);
    }

    /** Makes a shop where there is none. */
    static void make(Address address, Catalogue catalogue, Setup setup) {
        Clock machine = Clock.system(setup.shop().zone());
        Beginning beginning = Beginning.of(catalogue, setup, LocalDate.now(machine));
        List<KeptPin> pins = PinHashing.usual().keep(setup.pins());
        Instant now = setup.morning().map(morning -> opening(setup, morning)).orElse(machine.instant());
        Store.make(address, new Stamp(now, "set-up", "set-up"), "the shop is set up", tx -> {
            tx.saveShop(setup.shop());
            pins.forEach(tx::savePin);
            tx.saveCatalogue(catalogue);
            new Saving(tx).all(beginning.changes());
            setup.morning().ifPresent(morning -> runFrom(tx, machine, opening(setup, morning)));
        });
    }

    private static Instant opening(Setup setup, Morning morning) {
        return morning.date()
                .atTime(morning.opensAt())
                .atZone(setup.shop().zone())
                .toInstant();
    }

    /** Whole seconds, rounded up: the demonstration opens at its time, never a second before. */
    private static void runFrom(Tx tx, Clock machine, Instant opens) {
        long ahead = Duration.between(machine.instant(), opens).toSeconds() + 1;
        tx.saveSetting(ShopClock.AHEAD, String.valueOf(ahead));
    }

    /** As fine as the records keep it, so that what an act left is equal to what is read of it afterwards. */
    Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    Pins pins() {
        return Pins.of(store, terminal.toString());
    }

    /** What is done so that nothing of the records is lost. */
    Safekeeping safekeeping() {
        return new Safekeeping(store, address, clock, terminal.toString());
    }

    /** The directory of what belongs to this terminal. */
    Path home() {
        return address.home();
    }

    ZoneId zone() {
        return clock.getZone();
    }

    Day day() {
        return store.read(days::today);
    }

    /** The same, with how far the records had come then. */
    AsSeen seen() {
        return store.read(reader -> new AsSeen(days.today(reader), reader.lastJournal()));
    }

    /** Another day, from the records: its opening, its hours and the visits that were not over by then; it has no plan. */
    Day day(LocalDate date) {
        return store.read(reader -> days.another(reader, date));
    }

    /**
     * The hours of the days from one date until another.
     *
     * @param until the day after the last
     */
    @Override
    public synchronized Ledger ledger(LocalDate from, LocalDate until) {
        Instant now = now();
        return store.read(reader -> {
            long journal = reader.lastJournal();
            Optional<Ledger> fresh = knownLedger
                    .filter(seen -> seen.journal() == journal)
                    .map(KnownLedger::ledger)
                    .filter(seen -> seen.from().equals(from) && seen.until().equals(until));
            Ledger ledger = fresh.map(seen -> seen.at(now))
                    .orElseGet(() -> new Ledgers(reader, days.books(reader)).read(from, until, now));
            knownLedger = Optional.of(new KnownLedger(journal, ledger));
            return ledger;
        });
    }

    /** The days from one date until another looked back upon. */
    @Override
    public LookBack lookBack(LocalDate from, LocalDate until) {
        Instant now = now();
        return store.read(reader -> {
            Ledgers ledgers = new Ledgers(reader, days.books(reader));
            Ledger ledger = ledgers.read(from, until, now);
            return LookBack.of(ledger, ledgers.noted(ledger));
        });
    }

    @Override
    public Optional<Visit> visit(String id) {
        return store.read(reader -> reader.findVisit(id));
    }

    @Override
    public List<Measured> measured(String machineId) {
        return store.read(reader -> reader.measured(List.of(machineId)));
    }

    /** What a machine went through with us. */
    @Override
    public History history(String machineId) {
        return store.read(reader -> reader.history(machineId));
    }

    /** Whether this process has the file open itself. */
    boolean isOwner() {
        return store.isOwner();
    }

    boolean isDemonstration() {
        return store.read(ShopClock::isDemonstration);
    }

    /** What is made of the records as they are at one moment. */
    <T> T read(Function<Reader, T> work) {
        return store.read(work);
    }

    /** Number of the newest change of the records; where there is no way to them just now, none is waited for. */
    long newestChange() {
        return store.glance(Reader::lastJournal);
    }

    /** Whether the records have changed, or the date has turned, since the day was seen so. */
    boolean hasMovedOn(AsSeen seen) {
        return newestChange() != seen.change() || !days.date().equals(seen.day().date());
    }

    /**
     * Carries an act out and saves it; returns when it would survive a power cut.
     *
     * @param who id of the person at the terminal, for the journal
     */
    Outcome carryOut(Act act, String who) {
        return carryOut(act, who, Optional.empty(), Optional.empty());
    }

    /**
     * @param date the day the act is about; today when empty
     * @param signature who signs it; needed where {@link Signing} says so
     */
    Outcome carryOut(Act act, String who, Optional<LocalDate> date, Optional<Signature> signature) {
        return carryOut(act, who, date, signature, Optional.empty());
    }

    /**
     * @param seen the day as it was seen when the act was decided on; where another terminal has decided the same since, the act is
     *     refused
     */
    Outcome carryOut(
            Act act, String who, Optional<LocalDate> date, Optional<Signature> signature, Optional<AsSeen> seen) {
        Optional<Refusal> no = looking().or(() -> signing(act, date, signature));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Optional<Forestalled> upon =
                seen.filter(today -> date.isEmpty()).map(day -> new Forestalled(day, act, terminal));
        return save(act, who, date, upon);
    }

    /** What another terminal did to the same thing since the day was seen so, that has to do with why an act was refused. */
    Optional<Earlier> earlier(AsSeen seen, Act act, Refusal refusal) {
        Forestalled upon = new Forestalled(seen, act, terminal);
        return store.read(reader -> upon.earlier(reader, refusal));
    }

    private Stamp stamp(Instant at, String who) {
        return new Stamp(at, who, terminal.toString());
    }

    /** Why nothing is carried out from here; empty where something can be. */
    private Optional<Refusal> looking() {
        return access == Access.LOOK ? Optional.of(new Refusal("look_only", List.of())) : Optional.empty();
    }

    /** Refuses what is about to change something where this only looks. */
    void expectToWork() {
        looking().ifPresent(refusal -> {
            throw new CannotDo(refusal);
        });
    }

    private Optional<Refusal> signing(Act act, Optional<LocalDate> date, Optional<Signature> signature) {
        Day day = date.map(this::day).orElseGet(this::day);
        return Signing.signerOf(day, act).flatMap(signer -> signing(day, signer, signature));
    }

    /** Why a signature, or the lack of one, is not what is asked for. */
    private Optional<Refusal> signing(Day day, Signer signer, Optional<Signature> signature) {
        Optional<Signature> own =
                signature.filter(given -> signer.isMetBy(given.person().id()));
        return own.isEmpty() ? Optional.of(unsigned(day, signer)) : signed(own.get());
    }

    private static Refusal unsigned(Day day, Signer signer) {
        return signer instanceof Signer.Named named
                ? PinWords.needed(day.nameOf(named.personId()))
                : PinWords.neededOfAnybody();
    }

    /** The first one who ever signs anything in a shop chooses their PIN with that. */
    private Optional<Refusal> signed(Signature signature) {
        return pins().anySet()
                ? pins().refusal(signature, now())
                : pins().set(signature.person().id(), signature.pin(), Optional.empty(), now());
    }

    private Outcome save(Act act, String who, Optional<LocalDate> date, Optional<Forestalled> upon) {
        Instant now = now();
        Stamp stamp = stamp(now, who);
        if (act instanceof Act.ForgetOwner) {
            store.compactWhenClosed();
        }
        try {
            return store.change(stamp, act.getClass().getSimpleName(), tx -> {
                Optional<LocalDate> other = date.filter(wanted -> !wanted.equals(days.date()));
                Outcome outcome = other.isPresent()
                        ? Acts.apply(days.another(tx, other.get()), act, now)
                        : carriedOut(tx, act, now, upon);
                if (!(outcome instanceof Outcome.Done done)) {
                    throw new RefusedInside((Outcome.Refused) outcome);
                }
                new Saving(tx).all(done.changes());
                return done;
            });
        } catch (RefusedInside refused) {
            return refused.outcome;
        }
    }

    private Outcome carriedOut(Tx tx, Act act, Instant now, Optional<Forestalled> upon) {
        Day day = days.today(tx);
        Outcome outcome = Planning.carryOut(day, act, now);
        return upon.filter(seen -> outcome instanceof Outcome.Done)
                .flatMap(seen -> seen.refusal(tx, day))
                .<Outcome>map(Outcome.Refused::new)
                .orElse(outcome);
    }

    /** Carries out all of a change that was tried, as one change of the records; where any of it cannot be, none of it is. */
    Outcome keep(WhatIf whatIf, String who) {
        if (looking().isPresent()) {
            return new Outcome.Refused(looking().get());
        }
        Instant now = now();
        try {
            return store.change(stamp(now, who), "WhatIf", tx -> {
                Outcome outcome = whatIf.carryOut(days.today(tx), now);
                if (!(outcome instanceof Outcome.Done done)) {
                    throw new RefusedInside((Outcome.Refused) outcome);
                }
                new Saving(tx).all(done.changes());
                return done;
            });
        } catch (RefusedInside refused) {
            return refused.outcome;
        }
    }

    /**
     * Replaces the catalogue as a whole; refused while the shop's machines or their visits need what it lacks.
     *
     * @param signature of anybody who can sign
     */
    void replaceCatalogue(Catalogue catalogue, Signature signature) {
        expectToWork();
        signing(day(), new Signer.Anybody(), Optional.of(signature)).ifPresent(refusal -> {
            throw new CannotDo(refusal);
        });
        String who = signature.person().id();
        store.save(stamp(now(), who), "the catalogue is loaded", tx -> {
            List<Fault> faults = CatalogueFit.faults(days.today(tx), catalogue);
            if (!faults.isEmpty()) {
                throw new BadFile(faults);
            }
            List<Change> renewed = CatalogueFit.renewed(days.today(tx), catalogue).stream()
                    .map(Change.VisitSaved::new)
                    .map(Change.class::cast)
                    .toList();
            tx.saveCatalogue(catalogue);
            new Saving(tx).all(renewed);
        });
    }

    @Override
    public void close() {
        store.close();
    }

    /** Takes a refusal out through the change, which is rolled back by it. */
    private static final class RefusedInside extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient Outcome.Refused outcome;

        RefusedInside(Outcome.Refused outcome) {
            super(outcome.refusal().name(), null, false, false);
            this.outcome = outcome;
        }
    }
}
