package org.shedboard.app;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.shedboard.pack.Plan;
import org.shedboard.pack.search.Round;

/** One round being run on one thread, which others may look at. */
final class RoundInHand {
    private final Round round;
    private final BooleanSupplier stop;
    /** Written by the thread of the round alone. */
    private final AtomicLong tries = new AtomicLong();

    private volatile boolean cut;

    RoundInHand(Round round, BooleanSupplier stop) {
        this.round = round;
        this.stop = stop;
    }

    /** Empty when it was to stop before it began: a round makes some tries before it first asks. */
    Optional<Round.Found> run(Consumer<Plan> better) {
        if (stop.getAsBoolean()) {
            cut = true;
            return Optional.empty();
        }
        return Optional.of(round.run(this::isToStop, better));
    }

    /** The search asks this after every try. */
    private boolean isToStop() {
        tries.lazySet(tries.getPlain() + 1);
        if (stop.getAsBoolean()) {
            cut = true;
        }
        return cut;
    }

    /** Tries made so far. */
    long tries() {
        return tries.get();
    }

    /** Whether it was never told to stop. */
    boolean isWhole() {
        return !cut;
    }
}
