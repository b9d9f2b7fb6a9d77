package org.shedboard.shop;

import java.time.Instant;

/**
 * The time an owner was told.
 *
 * @param at when the machine is to be ready
 * @param by id of the person who said it
 * @param to who heard it, as typed
 * @param why why it changed; empty for the first one
 * @param ownersWish whether the owner asked for the change, so that the earlier promise no longer counts
 */
public record Promise(Instant at, String by, String to, Instant saidAt, String why, boolean ownersWish) {}
