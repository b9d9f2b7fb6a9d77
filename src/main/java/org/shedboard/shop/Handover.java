package org.shedboard.shop;

import java.time.Instant;

/**
 * A machine given back to its owner by somebody who told them what there is to know of it.
 *
 * @param by id of the person who handed it over
 * @param to who took it, as typed
 * @param told what they were told, as typed
 */
public record Handover(String by, String to, String told, Instant at) {}
