package org.shedboard.app;

import java.nio.file.Path;
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
import org.shedboard.board.Effect;
import org.shedboard.board.Msg;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.FixOffer;
import org.shedboard.day.Outcome;
import org.shedboard.day.Outlook;
import org.shedboard.day.Quoting;
import org.shedboard.day.Setup;
import org.shedboard.day.Trace;
import org.shedboard.day.WhatIf;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;
import org.shedboard.shop.Person;
import org.shedboard.shop.Pin;
import org.shedboard.shop.Shop;
import org.shedboard.store.Store;
import org.shedboard.store.StoreFailure;
import org.shedboard.tally.SpanTally;
import org.shedboard.words.Words;

/**
 * What goes on beside the screen: one thread that opens the shop, saves acts and works out quotes, one after another, and in
 * between looks once a second whether the minute has turned or another terminal has changed something. Whatever comes of it is
 * told as a message.
 */
final class Bench {
    private static final int CHANCE_TO_PROMISE = 80;
    private static final Duration LOOK_EVERY = Duration.ofSeconds(1);
    /** So long a day that is tried is packed; nobody waits longer to see what it comes to. */
    private static final SearchLimit A_TRIAL = SearchLimit.ofTime(Duration.ofSeconds(3));

    private static final String TERMINAL = "board";

    private final Path home;
    private final Means means;
    private final Consumer<Msg> tell;
    private final BlockingQueue<Runnable> jobs = new LinkedBlockingQueue<>();
    private final Thread thread = new Thread(this::work, "bench");
    private final BackgroundSearch search;
    private final BetterPlans betterPlans;
    private final DayWatch watch;
    private Optional<Workshop> workshop = Optional.empty();
    private Optional<DraftFile> draft = Optional.empty();
    private Instant minuteSeen = Instant.EPOCH;
    private volatile boolean over;

    /**
     * What it works with.
     *
     * @param opening opens the shop in a home
     * @param lookEvery how often it looks whether anything has changed
     * @param processors how many the machine has
     * @param access whether anything may be changed from here
     */
    record Means(Function<Path, Workshop> opening, Duration lookEvery, int processors, Access access) {
        /** To work with. */
        Means(Function<Path, Workshop> opening, Duration lookEvery, int processors) {
            this(opening, lookEvery, processors, Access.WORK);
        }

        /** @param at the moment to see a demonstration from */
        static Means usual(Optional<LocalDateTime> at, int processors) {
            return usual(at, processors, Access.WORK);
        }

        static Means usual(Optional<LocalDateTime> at, int processors, Access access) {
            return new Means(home -> Workshop.open(home, TERMINAL, at, access), LOOK_EVERY, processors, access);
        }

        boolean looksOnly() {
            return access == Access.LOOK;
        }
    }

    Bench(Path home, Means means, Consumer<Msg> tell) {
        this.home = home;
        this.means = means;
        this.tell = tell;
        this.search = new BackgroundSearch(means.processors(), tell);
        this.betterPlans = new BetterPlans(search);
        this.watch = new DayWatch(tell);
    }

    void start() {
        thread.start();
        search.start();
        watch.start();
    }

    /** Finishes what is under way, then closes the records. */
    void close() {
        search.close();
        watch.close();
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
            if (Store.exists(home)) {
                enter(home);
            } else {
                tell.accept(new Msg.NoShop());
            }
        });
    }

    void openDemonstration() {
        jobs.add(() -> enter(Demonstration.ready(home)));
    }

    /** Keeps a form that is half filled in, or no longer. */
    void keep(Map<String, String> form) {
        jobs.add(() -> draft.ifPresent(file -> file.keep(form)));
    }

    private void enter(Path shopHome) {
        workshop.ifPresent(Workshop::close);
        workshop = Optional.of(means.opening().apply(shopHome));
        draft = Optional.of(new DraftFile(shopHome)).filter(file -> !means.looksOnly());
        look();
        draft.ifPresent(file -> tell.accept(new Msg.FormKept(file.read())));
    }

    void perform(Effect effect, String who) {
        if (effect instanceof Effect.CarryOut carry) {
            jobs.add(() -> carryOut(carry, who));
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
        if (workshop.orElseThrow().keep(whatIf.postedAs(keep.shown()), who) instanceof Outcome.Refused refused) {
            tell.accept(new Msg.NotKept(whatIf, refused.refusal()));
        } else {
            look();
            tell.accept(new Msg.Kept(whatIf));
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
        Workshop.make(home, catalogue, new Setup(shop, List.of(), List.of(), List.of(), Optional.empty()));
        enter(home);
    }

    private void carryOut(Effect.CarryOut carry, String who) {
        Act act = carry.act();
        Outcome outcome = carry.signature()
                .map(signed -> carryOutSigned(carry, signed))
                .orElseGet(
                        () -> workshop.orElseThrow().carryOut(act, Actor.of(act, who), carry.date(), Optional.empty()));
        if (outcome instanceof Outcome.Refused refused) {
            tell.accept(new Msg.NotDone(act, carry.date(), refused.refusal()));
        } else {
            Outcome.Done done = (Outcome.Done) outcome;
            Optional<Trace> trace =
                    Optional.of(done.trace()).filter(left -> carry.date().isEmpty());
            look();
            tell.accept(new Msg.Saved(act, done.subject(), trace));
        }
    }

    private Outcome carryOutSigned(Effect.CarryOut carry, Effect.Signed signed) {
        Workshop shop = workshop.orElseThrow();
        Person person = shop.day().shop().expectPerson(signed.personId());
        Optional<Pin> typed = Pin.of(signed.pin().toCharArray());
        if (typed.isEmpty()) {
            return new Outcome.Refused(PinWords.form());
        }
        try (Pin pin = typed.get()) {
            return shop.carryOut(carry.act(), person.id(), carry.date(), Optional.of(new Signature(person, pin)));
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
        Day day = shop.day();
        Instant now = shop.now();
        minuteSeen = now.truncatedTo(ChronoUnit.MINUTES);
        Outlook outlook = Outlook.of(day, now);
        LocalDate date = day.date();
        tell.accept(new Msg.Seen(outlook, SpanTally.of(shop.ledger(date, date.plusDays(1)))));
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
                        .ifPresentOrElse(this::run, () -> run(this::lookIfMoved));
            } catch (InterruptedException stopped) {
                over = true;
            }
        }
        for (Runnable left : jobs) {
            run(left);
        }
    }

    private void lookIfMoved() {
        if (workshop.isPresent()) {
            Workshop shop = workshop.get();
            boolean minuteTurned = !shop.now().truncatedTo(ChronoUnit.MINUTES).equals(minuteSeen);
            if (minuteTurned || shop.hasMovedOn()) {
                look();
            }
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
