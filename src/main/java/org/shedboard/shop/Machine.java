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

    public Machine withLabel(String next) {
        return new Machine(id, ownerId, classId, next, modelYear, number, massKg, meterHours);
    }

    public Machine withModelYear(OptionalInt year) {
        return new Machine(id, ownerId, classId, label, year, number, massKg, meterHours);
    }

    public Machine withNumber(String next) {
        return new Machine(id, ownerId, classId, label, modelYear, next, massKg, meterHours);
    }

    public Machine withMassKg(int kilograms) {
        return new Machine(id, ownerId, classId, label, modelYear, number, kilograms, meterHours);
    }

    /** This record of the machine with what it lacks from another record of it; where both say something, this one stands. */
    public Machine filledFrom(Machine other) {
        Machine filled = label.isBlank() ? withLabel(other.label) : this;
        filled = number.isBlank() ? filled.withNumber(other.number) : filled;
        filled = modelYear.isEmpty() ? filled.withModelYear(other.modelYear) : filled;
        return meterHours.isEmpty() && other.meterHours.isPresent()
                ? filled.withMeterHours(other.meterHours.getAsInt())
                : filled;
    }
}
