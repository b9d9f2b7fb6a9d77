package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.board.Msg;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.day.Posted;
import org.shedboard.day.Quoting;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.search.Packer;

/** The search beside the screen, on the morning of the demonstration. */
@Timeout(60)
class BetterPlansTest {
    private static final SearchLimit ENDLESS = SearchLimit.ofTries(Long.MAX_VALUE);
    private static final int PROCESSORS = 3;

    @TempDir
    private static Path home;

    private static Day day;
    private static Instant now;

    private final BlockingQueue<Msg> told = new LinkedBlockingQueue<>();
    private final BackgroundSearch search = new BackgroundSearch(PROCESSORS, told::add);

    @BeforeAll
    static void read() {
        LocalDateTime at = LocalDateTime.parse(CommandRoom.MORNING);
        try (Workshop workshop = Workshop.open(Demonstration.ready(home), "test", Optional.of(at))) {
            day = workshop.day();
            now = workshop.now();
        }
    }

    @BeforeEach
    void start() {
        search.start();
    }

    @AfterEach
    void end() {
        search.close();
    }

    /** The day with a plan posted in which every machine that nobody has begun waits four hours for no reason. */
    private static Outlook badlyPosted() {
        Problem problem = Outlook.of(day, now).problem();
        int later = problem.now() + 240;
        List<Problem.Job> jobs = problem.jobs().stream()
                .map(job -> job.stays().stream().anyMatch(Problem.Stay::hasBegun) ? job : job.withArrives(later))
                .toList();
        Plan bad = Packer.pack(problem.withJobs(jobs), Search.of(1, 500));
        return Outlook.of(day.with(new Posted(bad, day.origin())), now);
    }

    private static BackgroundSearch.Wanted endless(String name) {
        return BackgroundSearch.Wanted.betterPlan(
                badlyPosted().problem(), ENDLESS, 1, plan -> Optional.of(new Msg.WentWrong(name)));
    }

    @Test
    void better_plans_than_a_bad_one_are_offered_while_the_search_goes_on_each_better_than_the_one_before()
            throws InterruptedException {
        Outlook outlook = badlyPosted();
        assertTrue(new BetterPlans(search, ENDLESS).lookFrom(outlook));
        Msg.BetterFound first = (Msg.BetterFound) told.take();
        assertTrue(PlanCheck.of(outlook.problem(), first.plan().plan()).isLegal());
        assertTrue(outlook.isWorth(first.plan().plan(), 30));
        assertTrue(outlook.isCalm(first.plan().plan()));
        assertEquals(0, first.plan().plan().bound(), "a bound of the day with its next hour kept is none of the day");
        assertEquals(outlook.differenceTo(first.plan().plan()), first.difference());
        Msg next = told.poll(1, TimeUnit.SECONDS);
        assertTrue(next == null
                || ((Msg.BetterFound) next)
                        .plan()
                        .plan()
                        .isBetterThan(first.plan().plan()));
    }

    @Test
    void what_was_offered_is_not_offered_again_when_nothing_but_the_minute_turns() throws InterruptedException {
        BetterPlans plans = new BetterPlans(search, SearchLimit.ofTries(20_000));
        Outlook outlook = badlyPosted();
        plans.lookFrom(outlook);
        told.take();
        awaitRest();
        told.clear();
        assertTrue(plans.lookFrom(Outlook.of(outlook.day(), now.plusSeconds(60))));
        awaitRest();
        assertEquals(List.of(), List.copyOf(told));
    }

    @Test
    void nothing_is_told_of_a_search_once_another_has_taken_its_place() throws InterruptedException {
        search.lookFor(endless("the first"));
        told.take();
        search.lookFor(endless("the second"));
        told.clear();
        assertEquals(new Msg.WentWrong("the second"), told.take());
    }

    @Test
    void a_quote_does_not_wait_for_better_plans_which_are_looked_for_anew_after_it() throws InterruptedException {
        Outlook outlook = Outlook.of(day, now);
        search.lookFor(endless("better"));
        told.take();
        search.lookFor(BackgroundSearch.Wanted.quote(
                outlook.problem(),
                Quoting.SEARCH,
                plan -> new Msg.BetterFound(new Posted(plan, day.origin()), outlook.differenceTo(plan))));
        told.clear();
        Msg.BetterFound quoted = (Msg.BetterFound) told.take();
        Plan alone = Packer.pack(outlook.problem(), Quoting.SEARCH);
        assertEquals(alone.tasks(), quoted.plan().plan().tasks());
        assertEquals(new Msg.WentWrong("better"), told.take());
    }

    @Test
    void a_search_that_is_stopped_leaves_the_machine_alone() throws InterruptedException {
        search.lookFor(endless("it"));
        told.take();
        assertFalse(searching().isEmpty());
        search.stop(BackgroundSearch.Kind.BETTER_PLAN);
        awaitRest();
    }

    @Test
    void a_day_on_which_nothing_happens_is_looked_at_so_often_and_no_more_and_another_one_anew() {
        BetterPlans plans = new BetterPlans(search, SearchLimit.ofTries(0));
        for (int look = 1; look <= BetterPlans.LOOKS; look++) {
            assertTrue(plans.lookFrom(Outlook.of(day, now.plusSeconds(60L * look))));
        }
        assertFalse(plans.lookFrom(Outlook.of(day, now)));
        assertTrue(plans.lookFrom(badlyPosted()));
    }

    /** Waits until no thread of a search is left. */
    private static void awaitRest() {
        while (!searching().isEmpty()) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(5));
        }
    }

    private static List<Thread> searching() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("search"))
                .toList();
    }
}
