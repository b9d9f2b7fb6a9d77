package org.shedboard.wire;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;
import org.shedboard.disk.OwnersFile;

/**
 * What a server keeps of the name and the password by which terminals are let in: the name, and of the password a salted hash that
 * does not lead back to it.
 */
public final class Password {
    /** Letters and digits that are not taken for one another, whatever the type. */
    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";

    private static final int GROUPS = 4;
    private static final int GROUP = 5;
    private static final int NAME_LETTERS = 4;

    /** The password is drawn, not chosen: twenty of 31 letters cannot be tried out, however fast each one is. */
    private static final int ITERATIONS = 10_000;

    private static final int SALT_BYTES = 16;
    private static final int HASH_BITS = 256;
    private static final int LINES = 3;

    private final String name;
    private final byte[] salt;
    private final byte[] hash;

    private Password(String name, byte[] salt, byte[] hash) {
        this.name = name;
        this.salt = salt;
        this.hash = hash;
    }

    /** Draws a name and a password. */
    public static Credentials drawn() {
        SecureRandom random = new SecureRandom();
        StringBuilder password = new StringBuilder(letters(random, GROUP));
        for (int i = 1; i < GROUPS; i++) {
            password.append('-').append(letters(random, GROUP));
        }
        return new Credentials("shed-" + letters(random, NAME_LETTERS), password.toString());
    }

    private static String letters(SecureRandom random, int count) {
        StringBuilder drawn = new StringBuilder();
        for (int i = 0; i < count; i++) {
            drawn.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return drawn.toString();
    }

    public static Password of(Credentials credentials) {
        byte[] salt = new byte[SALT_BYTES];
        new SecureRandom().nextBytes(salt);
        return new Password(credentials.name(), salt, hash(credentials.password(), salt));
    }

    public static Password in(Path file) {
        try {
            List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
            if (lines.size() != LINES) {
                throw new IOException("it has not three lines");
            }
            return new Password(lines.get(0), hex(lines.get(1)), hex(lines.get(2)));
        } catch (IOException | IllegalArgumentException problem) {
            throw unusable(file, problem);
        }
    }

    public void keepIn(Path file) {
        String lines = "%s%n%s%n%s%n"
                .formatted(name, HexFormat.of().formatHex(salt), HexFormat.of().formatHex(hash));
        try {
            OwnersFile.write(file, lines.getBytes(StandardCharsets.UTF_8));
        } catch (IOException problem) {
            throw unusable(file, problem);
        }
    }

    private static byte[] hex(String line) {
        return HexFormat.of().parseHex(line);
    }

    private static WireFailure unusable(Path file, Exception problem) {
        return new WireFailure(
                WireFailure.Kind.FILE,
                "the password's hash in %s cannot be used (%s); have a new password made"
                        .formatted(file, problem.getMessage()),
                problem);
    }

    /** Takes as long whether name, password or both are wrong. */
    boolean isThatOf(Credentials said) {
        boolean isName = MessageDigest.isEqual(bytes(name), bytes(said.name()));
        return isName & MessageDigest.isEqual(hash, hash(said.password(), salt));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] hash(String password, byte[] salt) {
        PBEKeySpec spec = new PBEKeySpec(password.toCharArray(), salt, ITERATIONS, HASH_BITS);
        try {
            return SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                    .generateSecret(spec)
                    .getEncoded();
        } catch (GeneralSecurityException problem) {
            throw new IllegalStateException("every Java has PBKDF2", problem);
        } finally {
            spec.clearPassword();
        }
    }
}
