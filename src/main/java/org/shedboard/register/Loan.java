package org.shedboard.register;

import java.time.Instant;
import java.util.Optional;

/**
 * A machine of ours that an owner has while theirs is here.
 *
 * @param machineId the machine, where it is on the books
 * @param label what it is called
 * @param visitId the visit of the owner's own machine
 * @param back when it came back; empty while it is out
 */
public record Loan(
        String id,
        Optional<String> machineId,
        String label,
        String visitId,
        String ownerId,
        Instant out,
        Optional<Instant> back) {
    public boolean isOut() {
        return back.isEmpty();
    }

    /** Whether it is this machine that was lent. */
    public boolean isOf(String machine) {
        return machineId.filter(machine::equals).isPresent();
    }

    /** Of another machine, where it was of this one. */
    Loan moved(String from, String to) {
        return isOf(from) ? new Loan(id, Optional.of(to), label, visitId, ownerId, out, back) : this;
    }

    public Loan backAt(Instant at) {
        return new Loan(id, machineId, label, visitId, ownerId, out, Optional.of(at));
    }
}
