package org.shedboard.shop;

/** Grade of dirt on arrival; the ordinal is the grade, 0 to 3. */
public enum Mud {
    CLEAN,
    DUSTY,
    MUDDY,
    CAKED;

    public int grade() {
        return ordinal();
    }

    public static Mud of(int grade) {
        if (grade < 0 || grade >= values().length) {
            throw new IllegalArgumentException("mud is a grade from 0 to 3, not %s".formatted(grade));
        }
        return values()[grade];
    }
}
