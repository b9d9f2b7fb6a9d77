package org.shedboard.wire;

import static java.util.stream.Collectors.joining;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What tells one key from every other, short enough to compare by eye: the SHA-256 of its certificate.
 *
 * @param hex its 64 digits, in small letters
 */
public record Fingerprint(String hex) {
    private static final int DIGITS = 64;
    /** So many digits stand together where it is shown. */
    private static final int GROUP = 8;

    public Fingerprint {
        if (!hex.matches("[0-9a-f]{" + DIGITS + "}")) {
            throw new IllegalArgumentException("no fingerprint: " + hex);
        }
    }

    static Fingerprint of(X509Certificate certificate) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded());
            return new Fingerprint(HexFormat.of().formatHex(digest));
        } catch (NoSuchAlgorithmException | CertificateEncodingException problem) {
            throw new IllegalStateException("every Java has SHA-256 and writes what it read", problem);
        }
    }

    /** As it was typed or copied, with blanks and colons or without; empty where it is none. */
    public static Optional<Fingerprint> parse(String text) {
        String digits = text.replaceAll("[\\s:]", "").toLowerCase(Locale.ROOT);
        return digits.matches("[0-9a-f]{" + DIGITS + "}") ? Optional.of(new Fingerprint(digits)) : Optional.empty();
    }

    /** In groups, as it is shown. */
    @Override
    public String toString() {
        return IntStream.range(0, DIGITS / GROUP)
                .mapToObj(group -> hex.substring(group * GROUP, (group + 1) * GROUP))
                .collect(joining(" "));
    }
}
