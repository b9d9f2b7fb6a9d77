package org.shedboard.app;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.shedboard.day.Refusal;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.Pin;
import org.shedboard.shop.PinHash;
import org.shedboard.shop.PinVerdict;
import org.shedboard.shop.WrongTries;
import org.shedboard.store.Stamp;
import org.shedboard.store.Store;

/**
 * The PINs of a shop's people. Every try at one is a change of its own in the records, whatever becomes of the act that was to be
 * signed: so wrong tries count at all terminals and after every restart. Hashing takes a good part of a second and is done before
 * the change, since nobody else can save anything during one.
 */
final class Pins {
    /** Who gave a wrong PIN, nobody knows. */
    private static final String SOMEBODY = "somebody";

    private final Store store;
    private final String terminal;
    private final PinHashing hashing;

    Pins(Store store, String terminal, PinHashing hashing) {
        this.store = store;
        this.terminal = terminal;
        this.hashing = hashing;
    }

    static Pins of(Store store, String terminal) {
        return new Pins(store, terminal, PinHashing.usual());
    }

    boolean anySet() {
        return store.read(reader -> reader.hasPins());
    }

    boolean isSet(String personId) {
        return find(personId).isPresent();
    }

    private Optional<KeptPin> find(String personId) {
        return store.read(reader -> reader.findPin(personId));
    }

    /** Whether this is the person's PIN; a wrong one is counted. */
    PinVerdict check(String personId, Pin pin, Instant now) {
        return find(personId).map(kept -> check(kept, pin, now)).orElseGet(PinVerdict.NoPin::new);
    }

    private PinVerdict check(KeptPin kept, Pin pin, Instant now) {
        Duration left = kept.tries().waitLeft(now);
        return left.isZero() ? count(kept, hashing.matches(pin, kept.hash()), now) : new PinVerdict.Waiting(left);
    }

    /**
     * Judges by the count as it is when this change is made. Of many tries begun at once, at however many terminals, no more get an
     * answer than if they had come one after another.
     */
    private PinVerdict count(KeptPin checked, boolean isRight, Instant now) {
        String personId = checked.personId();
        Stamp stamp = new Stamp(now, isRight ? personId : SOMEBODY, terminal);
        String what = isRight ? "the PIN of %s is given" : "a wrong PIN is given for %s";
        return store.change(stamp, what.formatted(personId), tx -> {
            KeptPin current = tx.findPin(personId).orElseThrow();
            // a PIN that was changed meanwhile is not the one that was compared
            boolean holds = isRight && current.hash().equals(checked.hash());
            tx.savePin(current.with(current.tries().after(holds, now)));
            return current.tries().verdict(holds, now);
        });
    }

    /** Why a signature does not hold; empty when it does. */
    Optional<Refusal> refusal(Signature by, Instant now) {
        return PinWords.refusal(
                check(by.person().id(), by.pin(), now), by.person().name());
    }

    /**
     * Sets a person's first or next PIN, and forgets the wrong tries at the one before; or says why not.
     *
     * @param by whoever has a PIN already; nobody where no PIN is set yet
     */
    Optional<Refusal> set(String personId, Pin next, Optional<Signature> by, Instant now) {
        Optional<Refusal> refusal = by.flatMap(signature -> refusal(signature, now));
        return refusal.isPresent() ? refusal : save(personId, hashing.hash(next), by, now);
    }

    private Optional<Refusal> save(String personId, PinHash hash, Optional<Signature> by, Instant now) {
        String who = by.map(signature -> signature.person().id()).orElse(personId);
        try {
            store.save(new Stamp(now, who, terminal), "the PIN of %s is set".formatted(personId), tx -> {
                if (by.isEmpty() && tx.hasPins()) {
                    throw new Unsigned();
                }
                tx.savePin(new KeptPin(personId, hash, WrongTries.NONE));
            });
            return Optional.empty();
        } catch (Unsigned unsigned) {
            return Optional.of(PinWords.unsigned());
        }
    }

    /** Takes a refusal out through the change, which is rolled back by it. */
    private static final class Unsigned extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unsigned() {
            super("nobody signed for the PIN", null, false, false);
        }
    }
}
