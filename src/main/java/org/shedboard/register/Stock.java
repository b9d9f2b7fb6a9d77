package org.shedboard.register;

import org.shedboard.shop.Amount;

/**
 * An item that somebody has counted.
 *
 * @param bin where it lies; may be empty
 * @param amount what is there by the last count and what was taken and came since; below nothing when the count was wrong
 */
public record Stock(String itemId, String bin, Amount amount) {
    public Stock with(Amount next) {
        return new Stock(itemId, bin, next);
    }

    public Stock inBin(String next) {
        return new Stock(itemId, next, amount);
    }
}
