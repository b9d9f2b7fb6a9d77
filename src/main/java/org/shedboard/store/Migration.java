package org.shedboard.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.List;

/** One step of the schema: {@code db/V001__name.sql} on the class path, each of its statements safe to repeat. */
record Migration(int version, String name, String text) {
    /** All there are, in order; a class path cannot be listed, and a test compares this with the directory. */
    static final List<String> FILES = List.of(
            "V001__shop.sql",
            "V002__pin.sql",
            "V003__hours.sql",
            "V004__numbers.sql",
            "V005__readings.sql",
            "V006__parts.sql",
            "V007__inspection.sql",
            "V008__notices.sql",
            "V009__pins.sql",
            "V010__rights.sql",
            "V011__change_line.sql",
            "V012__scale.sql");

    /** The number of the newest one. */
    static final int NEWEST = numberOf(FILES.get(FILES.size() - 1));

    static List<Migration> all() {
        return FILES.stream().map(Migration::load).toList();
    }

    private static Migration load(String file) {
        try (InputStream in = Migration.class.getResourceAsStream("/db/" + file)) {
            return of(file, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    static Migration of(String file, String text) {
        return new Migration(numberOf(file), file.substring(6, file.length() - 4), text.replace("\r\n", "\n"));
    }

    private static int numberOf(String file) {
        return Integer.parseInt(file.substring(1, 4));
    }

    List<String> statements() {
        String plain = text.replaceAll("(?m)^--.*\n", "");
        return Arrays.stream(plain.split(";\\s*\n"))
                .map(String::strip)
                .filter(statement -> !statement.isEmpty())
                .toList();
    }

    /** Tells one text from another. */
    String checksum() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return new BigInteger(1, digest).toString(Character.MAX_RADIX);
        } catch (NoSuchAlgorithmException problem) {
            throw new IllegalStateException("every Java has SHA-256", problem);
        }
    }
}
