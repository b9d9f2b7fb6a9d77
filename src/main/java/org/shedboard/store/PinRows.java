package org.shedboard.store;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.PinHash;
import org.shedboard.shop.WrongTries;

/** What is kept of people's PINs, in the table pin; the journal is read by more people than may see a hash, and tells none of it. */
final class PinRows {
    private static final Table PIN = Table.named("pin")
            .text("person_id", "salt", "hash")
            .number("iterations", "wrong_tries")
            .instant("wait_until")
            .keyed("person_id")
            .scoped("person_id")
            .untold();

    private PinRows() {}

    static Optional<KeptPin> find(Sql sql, String personId) {
        return sql.select(PIN, "WHERE person_id = ?", personId).stream()
                .findFirst()
                .map(row -> row.map(PinRows::toPin));
    }

    static boolean hasAny(Sql sql) {
        return sql.findNumber("SELECT COUNT(*) FROM pin").orElse(0L) > 0;
    }

    static Set<String> people(Sql sql) {
        return sql.select(PIN, "ORDER BY person_id").stream()
                .map(row -> row.text("person_id"))
                .collect(Collectors.toSet());
    }

    private static KeptPin toPin(Cells row) {
        return new KeptPin(
                row.text("person_id"),
                new PinHash(row.text("salt"), row.text("hash"), row.number("iterations")),
                new WrongTries(row.number("wrong_tries"), row.findInstant("wait_until")));
    }

    static Share share(KeptPin pin) {
        Cells row = Cells.in(PIN)
                .set("person_id", pin.personId())
                .set("salt", pin.hash().salt())
                .set("hash", pin.hash().hash())
                .set("iterations", pin.hash().iterations())
                .set("wrong_tries", pin.tries().inARow())
                .set("wait_until", pin.tries().waitUntil());
        return Share.of(PIN, List.of(pin.personId()), List.of(row));
    }
}
