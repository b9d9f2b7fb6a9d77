package org.shedboard.app;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.day.Act;
import org.shedboard.day.Outcome;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;

/** Quads of one owner that come one after another, to crowd a shop made of the seed. */
final class Quads {
    private Quads() {}

    /** Books one, ten minutes after the one with the index before it. */
    static void book(Workshop workshop, LocalDateTime morning, int index) {
        expectDone(workshop.carryOut(booking(morning, workshop.zone(), index), "P1"));
    }

    static void expectDone(Outcome outcome) {
        if (outcome instanceof Outcome.Refused refused) {
            throw new IllegalStateException("was refused: " + refused.refusal());
        }
    }

    private static Act booking(LocalDateTime morning, ZoneId zone, int index) {
        LocalDateTime expected = morning.plusMinutes(10L * (index + 1));
        return new Act.TakeIn(
                new Act.TakeIn.Whose(Optional.of("C12"), "", ""),
                new Act.TakeIn.Which(Optional.empty(), "quad", "quad " + index, OptionalInt.of(2020), ""),
                Mud.MUDDY,
                Optional.empty(),
                Condition.SOUND,
                List.of(new Act.Wanted("oil-quad", Payer.OWNER)),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.of(expected.atZone(zone).toInstant()),
                "",
                Optional.empty());
    }
}
