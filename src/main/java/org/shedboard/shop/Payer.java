package org.shedboard.shop;

/** Who pays for a line; our own account takes rework, goodwill and training. */
public enum Payer {
    OWNER,
    MAKER,
    OWN_ACCOUNT;

    /** Whether somebody else than the shop pays. */
    public boolean isOutside() {
        return this != OWN_ACCOUNT;
    }
}
