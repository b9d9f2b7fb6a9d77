package org.shedboard.store;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * What rows boil down to: how many they are, and the sum of their SHA-256 digests. A sum, because databases order texts each in its own
 * way.
 */
final class RowsDigest {
    private static final BigInteger ROUND = BigInteger.ONE.shiftLeft(256);

    private final MessageDigest sha = sha();
    private BigInteger sum = BigInteger.ZERO;
    private long rows;

    private static MessageDigest sha() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException problem) {
            throw new IllegalStateException("every Java has SHA-256", problem);
        }
    }

    void add(Cells row) {
        for (Column column : row.table().columns()) {
            Object content = row.expectSet(column.name());
            String text = content == null ? "-" : content.toString();
            sha.update("%s %s %s "
                    .formatted(column.name(), content == null ? "-" : "+", Integer.toString(text.length()))
                    .getBytes(StandardCharsets.UTF_8));
            sha.update(text.getBytes(StandardCharsets.UTF_8));
        }
        sum = sum.add(new BigInteger(1, sha.digest())).mod(ROUND);
        rows++;
    }

    long rows() {
        return rows;
    }

    @Override
    public String toString() {
        return rows + ":" + sum.toString(Character.MAX_RADIX);
    }
}
