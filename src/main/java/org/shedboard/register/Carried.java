package org.shedboard.register;

import org.shedboard.shop.Finding;

/**
 * A finding that a machine took home with it: that point is to be looked at again when it comes back.
 *
 * @param visitId the visit in which it was found
 */
public record Carried(String machineId, String visitId, Finding finding) {
    /** The same, of the machine that another record turned out to be of. */
    public Carried of(String machine) {
        return new Carried(machine, visitId, finding);
    }

    /** The one that was found later. */
    public Carried newer(Carried other) {
        return other.finding.at().isAfter(finding.at()) ? other : this;
    }

    Carried unnamed(String instead) {
        return new Carried(machineId, visitId, finding.unnamed(instead));
    }
}
