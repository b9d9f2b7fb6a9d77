package org.shedboard.estimate;

/**
 * What a wash-down takes beyond the washing, where a property wants one before anything else.
 *
 * @param signMinutes minutes to look the machine over for soil and seed and to sign
 * @param padMinutes minutes to clean the pad afterwards, before the next machine comes onto it
 */
public record WashDown(int signMinutes, int padMinutes) {
    /** For a catalogue that says nothing of it. Invented figures. */
    public static final WashDown USUAL = new WashDown(5, 15);

    public WashDown {
        if (signMinutes < 1 || padMinutes < 1) {
            throw new IllegalArgumentException(
                    "a wash-down cannot take %s + %s minutes".formatted(signMinutes, padMinutes));
        }
    }
}
