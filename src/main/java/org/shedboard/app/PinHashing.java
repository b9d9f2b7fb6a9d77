package org.shedboard.app;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.Pin;
import org.shedboard.shop.PinHash;
import org.shedboard.shop.WrongTries;

/** Makes of a PIN what is kept of it, and compares: PBKDF2 with HMAC-SHA-256, with a salt of its own for each PIN. */
final class PinHashing {
    /** What the Password Storage Cheat Sheet of OWASP asks for with this function; the figure is from memory. */
    private static final int ITERATIONS = 600_000;

    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final HexFormat HEX = HexFormat.of();

    private final int iterations;
    private final SecureRandom chance = new SecureRandom();

    /** @param iterations of new hashes; fewer than the usual are for tests only */
    PinHashing(int iterations) {
        this.iterations = iterations;
    }

    static PinHashing usual() {
        return new PinHashing(ITERATIONS);
    }

    PinHash hash(Pin pin) {
        byte[] salt = new byte[SALT_BYTES];
        chance.nextBytes(salt);
        return new PinHash(
                HEX.formatHex(salt), HEX.formatHex(derive(pin.digits(), salt, iterations, HASH_BYTES)), iterations);
    }

    /** Takes as long for a wrong PIN as for the right one. */
    boolean matches(Pin pin, PinHash kept) {
        byte[] hash = HEX.parseHex(kept.hash());
        byte[] derived = derive(pin.digits(), HEX.parseHex(kept.salt()), kept.iterations(), hash.length);
        return MessageDigest.isEqual(hash, derived);
    }

    /** The PINs of a new shop, by the ids of their people, as they are to be saved; they are wiped. */
    List<KeptPin> keep(Map<String, Pin> pins) {
        List<KeptPin> kept = new ArrayList<>();
        pins.forEach((personId, given) -> {
            try (Pin pin = given) {
                kept.add(new KeptPin(personId, hash(pin), WrongTries.NONE));
            }
        });
        return kept;
    }

    static byte[] derive(char[] secret, byte[] salt, int iterations, int bytes) {
        PBEKeySpec spec = new PBEKeySpec(secret, salt, iterations, bytes * Byte.SIZE);
        try {
            return SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                    .generateSecret(spec)
                    .getEncoded();
        } catch (GeneralSecurityException problem) {
            throw new IllegalStateException("every Java has PBKDF2 with HMAC-SHA-256", problem);
        } finally {
            spec.clearPassword();
        }
    }
}
