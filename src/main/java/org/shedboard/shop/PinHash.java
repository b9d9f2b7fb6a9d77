package org.shedboard.shop;

import java.util.regex.Pattern;

/**
 * What is kept in place of a PIN: what a slow function makes of it and of a salt. A PIN has so few digits that whoever reads this
 * could find it by trying all, so it is shown no more than the PIN.
 *
 * @param salt bytes drawn for this PIN alone, as hexadecimal digits
 * @param hash what the function made, as hexadecimal digits
 * @param iterations how often the function went over it: raised one day, it still tells how the older ones were made
 */
public record PinHash(String salt, String hash, int iterations) {
    private static final Pattern BYTES = Pattern.compile("([0-9a-f]{2})+");

    public PinHash {
        if (!BYTES.matcher(salt).matches() || !BYTES.matcher(hash).matches()) {
            throw new IllegalArgumentException("salt or hash of a PIN are not bytes as hexadecimal digits");
        }
        if (iterations < 1) {
            throw new IllegalArgumentException("a PIN cannot be hashed by %s iterations".formatted(iterations));
        }
    }

    @Override
    public String toString() {
        return "the hash of a PIN";
    }
}
