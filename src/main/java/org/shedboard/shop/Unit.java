package org.shedboard.shop;

import java.util.Optional;
import java.util.stream.Stream;

/** What an item is counted in. */
public enum Unit {
    EACH(""),
    LITRES("L"),
    GRAMS("g"),
    MILLILITRES("mL");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    /** How it is written behind a number; nothing for what is counted piece by piece. */
    public String symbol() {
        return symbol;
    }

    /** Pieces come whole, anything else in parts too. */
    public boolean takes(Amount amount) {
        return this != EACH || amount.isWhole();
    }

    static Optional<Unit> ofSymbol(String symbol) {
        return Stream.of(values()).filter(unit -> unit.symbol.equals(symbol)).findFirst();
    }
}
