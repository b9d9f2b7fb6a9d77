package org.shedboard.register;

import java.time.Instant;
import java.util.Optional;

/**
 * A machine of ours that an owner has while theirs is here.
 *
 * @param visitId the visit of the owner's own machine
 * @param back when it came back; empty while it is out
 */
public record Loan(String id, String machineId, String visitId, Instant out, Optional<Instant> back) {}
