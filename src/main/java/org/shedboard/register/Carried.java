package org.shedboard.register;

import org.shedboard.shop.Finding;

/**
 * A finding that a machine took home with it: that point is to be looked at again when it comes back.
 *
 * @param visitId the visit in which it was found
 */
public record Carried(String machineId, String visitId, Finding finding) {}
