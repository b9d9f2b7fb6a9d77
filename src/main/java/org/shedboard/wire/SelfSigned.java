package org.shedboard.wire;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HexFormat;
import java.util.Locale;

/**
 * A certificate that a key signs for itself, written out as RFC 5280 has it. It vouches for nobody; terminals know it by its
 * fingerprint, so that it never has to end.
 */
final class SelfSigned {
    private static final String NAME = "shedboard";

    /** Object identifiers as they stand in a certificate: ecdsa-with-SHA256 (RFC 5758, 3.2) and common name (X.520). */
    private static final byte[] ECDSA_WITH_SHA256 = HexFormat.of().parseHex("06082a8648ce3d040302");

    private static final byte[] COMMON_NAME = HexFormat.of().parseHex("0603550403");

    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("yyMMddHHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
    /** For what has no well-defined end: RFC 5280, 4.1.2.5. */
    private static final String NEVER = "99991231235959Z";

    private static final int SERIAL_BITS = 126;

    private static final int SEQUENCE = 0x30;
    private static final int SET = 0x31;
    private static final int INTEGER = 0x02;
    private static final int BITS = 0x03;
    private static final int TEXT = 0x0c;
    private static final int UTC_TIME = 0x17;
    private static final int GENERALIZED_TIME = 0x18;
    private static final int VERSION = 0xa0;
    private static final byte[] VERSION_3 = {2};

    private SelfSigned() {}

    /** @param from the moment it begins at, before the year 2050 */
    static X509Certificate of(KeyPair pair, Instant from) throws GeneralSecurityException {
        byte[] algorithm = part(SEQUENCE, ECDSA_WITH_SHA256);
        byte[] told = told(pair, from, algorithm);
        Signature signature = Signature.getInstance("SHA256withECDSA");
        signature.initSign(pair.getPrivate());
        signature.update(told);
        // a string of bits says first how many of its last byte's are none: here always none
        byte[] signed = part(BITS, new byte[1], signature.sign());
        return (X509Certificate) CertificateFactory.getInstance("X.509")
                .generateCertificate(new ByteArrayInputStream(part(SEQUENCE, told, algorithm, signed)));
    }

    private static byte[] told(KeyPair pair, Instant from, byte[] algorithm) {
        byte[] serial = new BigInteger(SERIAL_BITS, new SecureRandom())
                .add(BigInteger.ONE)
                .toByteArray();
        byte[] name = part(
                SEQUENCE, part(SET, part(SEQUENCE, COMMON_NAME, part(TEXT, NAME.getBytes(StandardCharsets.UTF_8)))));
        byte[] validity = part(SEQUENCE, part(UTC_TIME, ascii(UTC.format(from))), part(GENERALIZED_TIME, ascii(NEVER)));
        return part(
                SEQUENCE,
                part(VERSION, part(INTEGER, VERSION_3)),
                part(INTEGER, serial),
                algorithm,
                name,
                validity,
                name,
                pair.getPublic().getEncoded());
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    /** A tag, the length of what follows, and that. */
    private static byte[] part(int tag, byte[]... contents) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] each : contents) {
            all.writeBytes(each);
        }
        ByteArrayOutputStream part = new ByteArrayOutputStream();
        part.write(tag);
        part.writeBytes(length(all.size()));
        part.writeBytes(all.toByteArray());
        return part.toByteArray();
    }

    /** Below 128 a byte of its own; else how many bytes it takes, and those. */
    private static byte[] length(int count) {
        if (count < 0x80) {
            return new byte[] {(byte) count};
        }
        return count < 0x100
                ? new byte[] {(byte) 0x81, (byte) count}
                : new byte[] {(byte) 0x82, (byte) (count >> 8), (byte) count};
    }
}
