package org.shedboard.shop;

import java.util.OptionalInt;

/**
 * One owner's machine.
 *
 * @param label maker and model as typed
 * @param number identification number as typed, may be empty
 * @param massKg what it weighs ready for work
 * @param meterHours the newest reading we have
 */
public record Machine(
        String id,
        String ownerId,
        String classId,
        String label,
        OptionalInt modelYear,
        String number,
        int massKg,
        OptionalInt meterHours) {
    public Machine withMeterHours(int hours) {
        return new Machine(id, ownerId, classId, label, modelYear, number, massKg, OptionalInt.of(hours));
    }
}
