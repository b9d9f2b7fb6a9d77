package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.day.Refusal;
import org.shedboard.files.Seed;
import org.shedboard.shop.Person;
import org.shedboard.shop.Pin;
import org.shedboard.shop.PinHash;
import org.shedboard.shop.PinVerdict;
import org.shedboard.shop.Shop;
import org.shedboard.store.JournalRow;
import org.shedboard.store.Stamp;
import org.shedboard.store.Store;
import org.shedboard.testing.Records;
import org.shedboard.words.Words;

/** Real records and hashes of few iterations. The PINs are long, so that no digits of something else can be taken for them. */
@Timeout(60)
@Tag("records")
class PinsTest {
    private static final Instant NOW = Instant.parse("2026-05-12T00:00:00Z");
    private static final Shop SHOP = Seed.shop(Seed.catalogue()).shop();
    private static final Person MARNIE = SHOP.findPersonCalled("Marnie").orElseThrow();
    private static final Person TOBIN = SHOP.findPersonCalled("Tobin").orElseThrow();
    private static final String RIGHT = "907318265544";
    private static final String WRONG = "907318265545";
    private static final String OTHER = "551199003377";

    @TempDir
    private Path home;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.openOrCreate(Records.at(home));
        store.save(new Stamp(NOW, "set-up", "set-up"), "begin", tx -> tx.saveShop(SHOP));
    }

    @AfterEach
    void close() {
        store.close();
    }

    private static Pins at(Store records, String terminal) {
        return new Pins(records, terminal, new PinHashing(3));
    }

    private Pins pins() {
        return at(store, "board");
    }

    private static Pin pin(String digits) {
        return Pin.of(digits.toCharArray()).orElseThrow();
    }

    private static Optional<Signature> by(Person person, String digits) {
        return Optional.of(new Signature(person, pin(digits)));
    }

    private void marnieHasOne() {
        assertEquals(Optional.empty(), pins().set(MARNIE.id(), pin(RIGHT), Optional.empty(), NOW));
    }

    private PinVerdict check(String digits, Instant at) {
        return pins().check(MARNIE.id(), pin(digits), at);
    }

    private void wrong(int times) {
        for (int i = 0; i < times; i++) {
            assertTrue(check(WRONG, NOW) instanceof PinVerdict.Wrong);
        }
    }

    private static PinVerdict waiting(int seconds) {
        return new PinVerdict.Waiting(Duration.ofSeconds(seconds));
    }

    private static String sentence(Optional<Refusal> refusal) {
        Refusal refused = refusal.orElseThrow();
        return Words.say(refused.name(), refused.values());
    }

    @Test
    void nobody_has_a_pin_at_first_and_anybody_may_set_the_first() {
        assertFalse(pins().anySet());
        assertEquals(new PinVerdict.NoPin(), check(RIGHT, NOW));
        marnieHasOne();
        assertTrue(pins().anySet());
        assertTrue(pins().isSet(MARNIE.id()));
        assertFalse(pins().isSet(TOBIN.id()));
    }

    @Test
    void a_pin_is_right_for_whom_it_belongs_to_and_nobody_else() {
        marnieHasOne();
        assertEquals(new PinVerdict.Right(), check(RIGHT, NOW));
        assertEquals(new PinVerdict.Wrong(1, Duration.ZERO), check(WRONG, NOW));
        assertEquals(new PinVerdict.NoPin(), pins().check(TOBIN.id(), pin(RIGHT), NOW));
    }

    @Test
    void once_there_is_a_pin_nobody_sets_one_unsigned() {
        marnieHasOne();
        assertEquals(
                "There are PINs here already: to set one, somebody who has one must sign.",
                sentence(pins().set(TOBIN.id(), pin(OTHER), Optional.empty(), NOW)));
        assertEquals(
                "Tobin has no PIN yet; \"shedboard pin\" sets one, signed by somebody who has one.",
                sentence(pins().set(TOBIN.id(), pin(OTHER), by(TOBIN, OTHER), NOW)));
        assertEquals("That PIN is wrong.", sentence(pins().set(TOBIN.id(), pin(OTHER), by(MARNIE, WRONG), NOW)));
        assertFalse(pins().isSet(TOBIN.id()));
    }

    @Test
    void who_has_a_pin_changes_their_own_and_signs_for_others() {
        marnieHasOne();
        assertEquals(Optional.empty(), pins().set(TOBIN.id(), pin(OTHER), by(MARNIE, RIGHT), NOW));
        assertEquals(new PinVerdict.Right(), pins().check(TOBIN.id(), pin(OTHER), NOW));
        assertEquals(Optional.empty(), pins().set(MARNIE.id(), pin(WRONG), by(MARNIE, RIGHT), NOW));
        assertEquals(new PinVerdict.Right(), check(WRONG, NOW));
        assertEquals(new PinVerdict.Wrong(1, Duration.ZERO), check(RIGHT, NOW));
    }

    @Test
    void a_new_pin_can_be_used_at_once_whatever_was_tried_at_the_one_before() {
        marnieHasOne();
        pins().set(TOBIN.id(), pin(OTHER), by(MARNIE, RIGHT), NOW);
        wrong(4);
        assertEquals(Optional.empty(), pins().set(MARNIE.id(), pin(RIGHT), by(TOBIN, OTHER), NOW));
        assertEquals(new PinVerdict.Right(), check(RIGHT, NOW));
    }

    @Test
    void a_right_pin_waits_like_a_wrong_one_and_then_begins_the_count_anew() {
        marnieHasOne();
        wrong(3);
        assertEquals(new PinVerdict.Wrong(4, Duration.ofSeconds(10)), check(WRONG, NOW));
        assertEquals(waiting(10), check(RIGHT, NOW));
        assertEquals(waiting(1), check(RIGHT, NOW.plusSeconds(9)));
        assertEquals(new PinVerdict.Right(), check(RIGHT, NOW.plusSeconds(10)));
        assertEquals(new PinVerdict.Wrong(1, Duration.ZERO), check(WRONG, NOW.plusSeconds(10)));
    }

    @Test
    void a_clock_that_jumped_back_locks_nobody_out() {
        marnieHasOne();
        wrong(4);
        assertEquals(new PinVerdict.Right(), check(RIGHT, NOW.minus(Duration.ofDays(365))));
    }

    @Test
    void who_was_counted_out_is_so_after_a_restart() {
        marnieHasOne();
        wrong(4);
        store.close();
        store = Store.open(Records.at(home));
        assertEquals(waiting(8), check(RIGHT, NOW.plusSeconds(2)));
        assertEquals(new PinVerdict.Wrong(5, Duration.ofSeconds(20)), check(WRONG, NOW.plusSeconds(10)));
    }

    @Test
    void a_wrong_try_at_one_terminal_counts_at_the_other() {
        marnieHasOne();
        try (Store second = Store.open(Records.at(home))) {
            assertFalse(second.isOwner());
            wrong(2);
            Pins there = at(second, "wash pad");
            assertEquals(new PinVerdict.Wrong(3, Duration.ZERO), there.check(MARNIE.id(), pin(WRONG), NOW));
            assertEquals(new PinVerdict.Wrong(4, Duration.ofSeconds(10)), check(WRONG, NOW));
            assertEquals(waiting(10), there.check(MARNIE.id(), pin(RIGHT), NOW));
        }
    }

    @Test
    void of_many_tries_at_once_no_more_are_answered_than_one_after_another() throws Exception {
        marnieHasOne();
        List<Callable<PinVerdict>> tries = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            tries.add(() -> check(WRONG, NOW));
        }
        ExecutorService terminals = Executors.newFixedThreadPool(12);
        try {
            int answered = 0;
            for (Future<PinVerdict> each : terminals.invokeAll(tries)) {
                answered += each.get() instanceof PinVerdict.Wrong ? 1 : 0;
            }
            assertEquals(4, answered);
        } finally {
            terminals.shutdownNow();
        }
    }

    @Test
    void a_refusal_says_what_to_do_and_how_long_to_wait() {
        marnieHasOne();
        wrong(3);
        Signature wrong = new Signature(MARNIE, pin(WRONG));
        Signature right = new Signature(MARNIE, pin(RIGHT));
        assertEquals("That PIN is wrong; wait 10 seconds before the next try.", sentence(pins().refusal(wrong, NOW)));
        assertEquals(
                "The PIN of Marnie was wrong too often in a row; wait 1 second before the next try.",
                sentence(pins().refusal(right, NOW.plusMillis(9_001))));
        Instant later = NOW;
        for (int i = 0; i < 6; i++) {
            later = later.plusSeconds(900);
            pins().refusal(wrong, later);
        }
        assertEquals(
                "The PIN of Marnie was wrong too often in a row; wait 11 minutes before the next try.",
                sentence(pins().refusal(right, later)));
        assertEquals(Optional.empty(), pins().refusal(right, later.plusSeconds(640)));
    }

    @Test
    void the_journal_tells_who_set_whose_pin_and_when_one_was_given() {
        marnieHasOne();
        pins().set(TOBIN.id(), pin(OTHER), by(MARNIE, RIGHT), NOW);
        check(WRONG, NOW);
        List<String> told = journal().stream()
                .skip(1)
                .map(row -> row.who() + ": " + row.what() + row.before() + row.after())
                .toList();
        assertEquals(
                List.of(
                        "P1: the PIN of P1 is set",
                        "P1: the PIN of P1 is given",
                        "P1: the PIN of P2 is set",
                        "somebody: a wrong PIN is given for P1"),
                told);
    }

    @Test
    void neither_the_journal_nor_a_refusal_tells_a_pin_or_what_is_kept_of_it() {
        marnieHasOne();
        pins().set(TOBIN.id(), pin(OTHER), by(MARNIE, RIGHT), NOW);
        PinHash kept =
                store.read(reader -> reader.findPin(MARNIE.id()).orElseThrow().hash());
        List<String> told = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            told.add(pins().refusal(new Signature(MARNIE, pin(WRONG)), NOW).toString());
        }
        journal().forEach(row -> told.add(row.toString()));
        assertTrue(told.size() > 12, told.size() + " told");
        for (String secret : List.of(RIGHT, WRONG, OTHER, kept.salt(), kept.hash())) {
            assertEquals(
                    List.of(),
                    told.stream().filter(each -> each.contains(secret)).toList());
        }
    }

    private List<JournalRow> journal() {
        return store.read(reader -> reader.journal(0));
    }
}
