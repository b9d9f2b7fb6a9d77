package org.shedboard.app;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.board.Earlier;
import org.shedboard.board.Effect;
import org.shedboard.board.Msg;
import org.shedboard.day.Act;
import org.shedboard.day.AsSeen;
import org.shedboard.day.Day;
import org.shedboard.day.FixOffer;
import org.shedboard.day.Outcome;
import org.shedboard.day.Outlook;
import org.shedboard.day.Quoting;
import org.shedboard.day.Refusal;
import org.shedboard.day.Setup;
import org.shedboard.day.Trace;
import org.shedboard.day.WhatIf;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;
import org.shedboard.shop.Person;
import org.shedboard.shop.Pin;
import org.shedboard.shop.Shop;
import org.shedboard.store.Address;
import org.shedboard.store.Store;
import org.shedboard.store.StoreFailure;
import org.shedboard.tally.SpanTally;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/**
 * What goes on beside the screen: one thread that opens the shop, saves acts and works out quotes, one after another, and in
 * between looks twice a second whether the minute has turned or another terminal has changed something. Whatever comes of it is
 * told as a message.
 */
final class Bench {
    private static final int CHANCE_TO_PROMISE = 80;
    private static final Duration LOOK_EVERY = Duration.ofMillis(500);
    /** So long a day that is tried is packed; nobody waits longer to see what it comes to. */
    private static final SearchLimit A_TRIAL = SearchLimit.ofTime(Duration.ofSeconds(3));

    private static final String TERMINAL = "board";

    private final Address address;
    private final Means means;
    private final Consumer<Msg> tell;
    private final BlockingQueue<Runnable> jobs = new LinkedBlockingQueue<>();
    private final Thread thread = new Thread(this::work, "bench");
    private final BackgroundSearch search;
    private final BetterPlans betterPlans;
    private final DayWatch watch;
    private final SafeWatch safety;
    private Optional<Workshop> workshop = Optional.empty();
    private Optional<DraftFile> draft = Optional.empty();
    private Instant minuteSeen = Instant.EPOCH;
    /** What the board was told last. Other readings of the day, for a quote or an act that was refused, are not told to it. */
    private Optional<AsSeen> told = Optional.empty();
    /** Whether the records could not be reached when they were looked at last. */
    private boolean isAway;
    /** What is to be opened as soon as it can be reached. */
    private Optional<Address> wanted = Optional.empty();

    private volatile boolean over;

    /**
     * What it works with.
     *
     * @param opening opens the shop at an address
     * @param lookEvery how often it looks whether anything has changed
     * @param processors how many the machine has
     * @param access whether anything may be changed from here
     */
    record Means(Function<Address, Workshop> opening, Duration lookEvery, int processors, Access access) {
        /** To work with. */
        Means(Function<Address, Workshop> opening, Duration lookEvery, int processors) {
            this(opening, lookEvery, processors, Access.WORK);
        }

        /** @param at the moment to see a demonstration from */
        static Means usual(Optional<LocalDateTime> at, int processors) {
            return usual(at, processors, Access.WORK);
        }

        static Means usual(Optional<LocalDateTime> at, int processors, Access access) {
            return new Means(address -> Workshop.open(address, TERMINAL, at, access), LOOK_EVERY, processors, access);
        }

        boolean looksOnly() {
            return access == Access.LOOK;
        }
    }

    Bench(Address address, Means means, Consumer<Msg> tell) {
        this.address = address;
        this.means = means;
        this.tell = tell;
        this.search = new BackgroundSearch(means.processors(), tell);
        this.betterPlans = new BetterPlans(search);
        this.watch = new DayWatch(tell);
        this.safety = new SafeWatch(tell);
    }

    void start() {
        thread.start();
        search.start();
        watch.start();
        safety.start();
    }

    /** Finishes what is under way, then closes the records. */
    void close() {
        search.close();
        watch.close();
        safety.close();
        over = true;
        jobs.add(() -> {});
        try {
            thread.join();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    void open() {
        jobs.add(() -> {
            if (!(address instanceof Address.InHome)) {
                wanted = Optional.of(address);
                lookAround();
            } else if (Store.exists(address)) {
                enter(address);
            } else {
                tell.accept(new Msg.NoShop());
            }
        });
    }

    void openDemonstration() {
        jobs.add(() -> enter(Demonstration.ready(address.home())));
    }

    /** Keeps a form that is half filled in, or no longer. */
    void keep(Map<String, String> form) {
        jobs.add(() -> draft.ifPresent(file -> file.keep(form)));
    }

    private void enter(Address shop) {
        workshop.ifPresent(Workshop::close);
        workshop = Optional.of(means.opening().apply(shop));
        draft = Optional.of(new DraftFile(shop.home())).filter(file -> !means.looksOnly());
        look();
        draft.ifPresent(file -> tell.accept(new Msg.FormKept(file.read())));
        safety.watch(workshop.get());
    }

    /**
     * @param who id of the person at the terminal
     * @param seen the day as they saw it when they made up their mind
     */
    void perform(Effect effect, String who, Optional<AsSeen> seen) {
        if (effect instanceof Effect.CarryOut carry) {
            jobs.add(() -> carryOut(carry, who, seen));
        } else if (effect instanceof Effect.AskQuote ask) {
            jobs.add(() -> quote(ask));
        } else if (effect instanceof Effect.TryOut tried) {
            jobs.add(() -> tryOut(tried.whatIf()));
        } else if (effect instanceof Effect.Keep keep) {
            jobs.add(() -> keep(keep, who));
        } else if (effect instanceof Effect.AskFix ask) {
            jobs.add(() -> offerFix(ask));
        } else if (effect instanceof Effect.WriteReport write) {
            jobs.add(() -> tell.accept(new Msg.Written(Reports.write(workshop.orElseThrow(), write.visitId()))));
        } else if (effect instanceof Effect.ReadHours read) {
            jobs.add(() -> readHours(read));
        } else if (effect instanceof Effect.LookBack back) {
            jobs.add(() -> tell.accept(new Msg.LookedBack(workshop.orElseThrow().lookBack(back.from(), back.until()))));
        } else if (effect instanceof Effect.ReadHistory read) {
            jobs.add(
                    () -> tell.accept(new Msg.HistoryRead(workshop.orElseThrow().history(read.machineId()))));
        } else if (effect instanceof Effect.MakeShop make) {
            jobs.add(() -> makeShop(make.shop()));
        } else if (effect instanceof Effect.OpenDemonstration) {
            openDemonstration();
        } else {
            throw new IllegalArgumentException("nothing performs " + effect);
        }
    }

    private void tryOut(WhatIf whatIf) {
        Workshop shop = workshop.orElseThrow();
        Outlook now = Outlook.of(shop.day(), shop.now());
        WhatIf.Answer answer = whatIf.on(now);
        search.stop(BackgroundSearch.Kind.TRIAL);
        tell.accept(new Msg.Tried(whatIf, answer));
        if (answer instanceof WhatIf.Answer.Tried tried && !whatIf.acts().isEmpty() && !whatIf.isOffer()) {
            search.lookFor(packed(whatIf, tried, now));
        }
    }

    /** The day that is tried packed anew; each plan that is better than all before is told. */
    private static BackgroundSearch.Wanted packed(WhatIf whatIf, WhatIf.Answer.Tried tried, Outlook now) {
        return new BackgroundSearch.Wanted(
                BackgroundSearch.Kind.TRIAL,
                tried.outlook().problem(),
                A_TRIAL,
                1,
                plan -> Optional.of(plan)
                        .filter(found -> found.isBetterThan(tried.outlook().plan()))
                        .map(found -> new Msg.Tried(whatIf, tried.by(found, now))),
                plan -> Optional.empty());
    }

    private void keep(Effect.Keep keep, String who) {
        WhatIf whatIf = keep.whatIf();
        Outcome outcome = workshop.orElseThrow().keep(whatIf.postedAs(keep.shown()), who);
        if (outcome instanceof Outcome.Done done) {
            look();
            tell.accept(new Msg.Kept(whatIf, done.trace()));
        } else {
            tell.accept(new Msg.NotKept(whatIf, ((Outcome.Refused) outcome).refusal()));
        }
    }

    private void offerFix(Effect.AskFix ask) {
        Workshop shop = workshop.orElseThrow();
        Outlook outlook = Outlook.of(shop.day(), shop.now());
        tell.accept(new Msg.FixOffered(FixOffer.of(outlook, ask.visitId(), ask.pointId())));
    }

    private void readHours(Effect.ReadHours read) {
        tell.accept(new Msg.HoursRead(SpanTally.of(workshop.orElseThrow().ledger(read.from(), read.until()))));
    }

    private void makeShop(Shop shop) {
        if (means.looksOnly()) {
            throw new CannotDo("look_only");
        }
        Catalogue catalogue = Seed.catalogue();
        Workshop.make(address, catalogue, new Setup(shop, List.of(), List.of(), List.of(), Optional.empty()));
        enter(address);
    }

    private void carryOut(Effect.CarryOut carry, String who, Optional<AsSeen> seen) {
        Act act = carry.act();
        Outcome outcome = carry.signature()
                .map(signed -> carryOutSigned(carry, signed, seen))
                .orElseGet(() ->
                        workshop.orElseThrow().carryOut(act, Actor.of(act, who), carry.date(), Optional.empty(), seen));
        if (outcome instanceof Outcome.Refused refused) {
            tellRefused(carry, refused.refusal(), seen);
        } else {
            Outcome.Done done = (Outcome.Done) outcome;
            Optional<Trace> trace =
                    Optional.of(done.trace()).filter(left -> carry.date().isEmpty());
            look();
            tell.accept(new Msg.Saved(act, done.subject(), trace));
        }
    }

    /** What there is to see now goes first, for whatever is decided next is decided upon that. */
    private void tellRefused(Effect.CarryOut carry, Refusal refusal, Optional<AsSeen> seen) {
        Workshop shop = workshop.orElseThrow();
        Optional<Earlier> earlier =
                seen.filter(day -> carry.date().isEmpty()).flatMap(day -> shop.earlier(day, carry.act(), refusal));
        lookIfMoved(shop);
        tell.accept(new Msg.NotDone(
                carry.act(), carry.date(), refusal, earlier, refusal.name().equals(Forestalled.OVERTAKEN)));
    }

    private Outcome carryOutSigned(Effect.CarryOut carry, Effect.Signed signed, Optional<AsSeen> seen) {
        Workshop shop = workshop.orElseThrow();
        Person person = shop.day().shop().expectPerson(signed.personId());
        Optional<Pin> typed = Pin.of(signed.pin().toCharArray());
        if (typed.isEmpty()) {
            return new Outcome.Refused(PinWords.form());
        }
        try (Pin pin = typed.get()) {
            Optional<Signature> signature = Optional.of(new Signature(person, pin));
            return shop.carryOut(carry.act(), person.id(), carry.date(), signature, seen);
        }
    }

    private void quote(Effect.AskQuote ask) {
        Workshop shop = workshop.orElseThrow();
        Quoting quoting = Quoting.of(shop.day(), ask.wanted(), CHANCE_TO_PROMISE, shop.now());
        tell.accept(new Msg.Quoted(quoting.atOnce(), ask.round()));
        search.stop(BackgroundSearch.Kind.QUOTE);
        quoting.problem()
                .ifPresent(problem -> search.lookFor(BackgroundSearch.Wanted.quote(
                        problem, Quoting.SEARCH, plan -> new Msg.Quoted(quoting.repacked(plan), ask.round()))));
    }

    /** Reads the day, tells the board, and has better plans looked for. */
    private void look() {
        search.stop(BackgroundSearch.Kind.BETTER_PLAN);
        Workshop shop = workshop.orElseThrow();
        AsSeen seen = shop.seen();
        Day day = seen.day();
        Instant now = shop.now();
        minuteSeen = now.truncatedTo(ChronoUnit.MINUTES);
        Outlook outlook = Outlook.of(day, now);
        LocalDate date = day.date();
        SpanTally tally = SpanTally.of(shop.ledger(date, date.plusDays(1)));
        tell.accept(new Msg.Seen(outlook, tally, seen.change()));
        told = Optional.of(seen);
        watch.look(outlook);
        betterPlans.lookFrom(outlook);
    }

    private void work() {
        try {
            workUntilOver();
        } finally {
            workshop.ifPresent(Workshop::close);
        }
    }

    private void workUntilOver() {
        while (!over) {
            try {
                Optional.ofNullable(jobs.poll(means.lookEvery().toMillis(), TimeUnit.MILLISECONDS))
                        .ifPresentOrElse(this::run, () -> run(this::lookAround));
            } catch (InterruptedException stopped) {
                over = true;
            }
        }
        for (Runnable left : jobs) {
            run(left);
        }
    }

    /** What was seen last stays on the board while the records are away; when they are back, it is seen anew. */
    private void lookAround() {
        try {
            if (wanted.isPresent()) {
                enter(wanted.get());
                wanted = Optional.empty();
            } else if (workshop.isPresent()) {
                lookIfMoved(workshop.get());
            }
        } catch (StoreFailure failure) {
            if (!mayComeBack(failure)) {
                wanted = Optional.empty();
                throw failure;
            }
            isAway = true;
            tell.accept(new Msg.RecordsAway(away(failure)));
        }
    }

    private static boolean mayComeBack(StoreFailure failure) {
        return failure.kind() == StoreFailure.Kind.UNREACHABLE || failure.kind() == StoreFailure.Kind.BROKEN;
    }

    private String away(StoreFailure failure) {
        return workshop.map(shop -> Words.say(
                        "app.records_away", failure.getMessage(), When.CLOCK.say(minuteSeen.atZone(shop.zone()))))
                .orElseGet(() -> Words.say("app.records_awaited", failure.getMessage()));
    }

    private void lookIfMoved(Workshop shop) {
        boolean minuteTurned = !shop.now().truncatedTo(ChronoUnit.MINUTES).equals(minuteSeen);
        boolean isAsTold = told.isPresent() && !shop.hasMovedOn(told.get());
        if (minuteTurned || isAway || !isAsTold) {
            look();
            isAway = false;
        }
    }

    /** What the records or the shop cannot do is said; anything else is a fault of the program and ends it. */
    private void run(Runnable job) {
        try {
            job.run();
        } catch (StoreFailure failure) {
            tell.accept(new Msg.WentWrong(Words.say("app.records", failure.getMessage())));
        } catch (CannotDo cannot) {
            tell.accept(new Msg.WentWrong(cannot.getMessage()));
        }
    }
}
