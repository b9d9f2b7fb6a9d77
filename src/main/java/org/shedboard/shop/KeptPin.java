package org.shedboard.shop;

/** A person's PIN as the records have it: its hash, and the wrong tries at it. */
public record KeptPin(String personId, PinHash hash, WrongTries tries) {
    public KeptPin with(WrongTries others) {
        return new KeptPin(personId, hash, others);
    }
}
