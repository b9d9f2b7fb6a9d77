package org.shedboard.shop;

import java.util.Optional;

/** An amount and what it is counted in, such as 2.5 L or 2. */
public record Quantity(Amount amount, Unit unit) {
    /** What a text such as "2.5 L" says; empty where it says none. */
    public static Optional<Quantity> find(String text) {
        String[] words = text.strip().split(" +", 2);
        Optional<Unit> unit = Unit.ofSymbol(words.length == 2 ? words[1] : "");
        return Amount.find(words[0]).flatMap(amount -> unit.map(known -> new Quantity(amount, known)));
    }

    @Override
    public String toString() {
        return (amount + " " + unit.symbol()).strip();
    }
}
