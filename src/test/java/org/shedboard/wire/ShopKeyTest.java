package org.shedboard.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.Date;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopKeyTest {
    private static final Instant NOW = Instant.parse("2026-11-27T08:00:00Z");

    @TempDir
    private Path directory;

    @Test
    void a_key_is_made_once_and_then_kept() {
        Path file = directory.resolve("serve").resolve("key.p12");
        Fingerprint made = ShopKey.in(file, NOW).fingerprint();
        assertEquals(made, ShopKey.in(file, NOW.plusSeconds(99)).fingerprint());
        assertNotEquals(made, ShopKey.in(directory.resolve("other.p12"), NOW).fingerprint());
    }

    @Test
    void a_key_is_for_its_owners_eyes_only() throws Exception {
        Assumptions.assumeTrue(
                directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Path file = directory.resolve("serve").resolve("key.p12");
        ShopKey.in(file, NOW);
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file.getParent())));
    }

    @Test
    void its_certificate_is_signed_by_itself_and_does_not_end() throws Exception {
        X509Certificate certificate =
                ShopKey.in(directory.resolve("key.p12"), NOW).certificate();
        certificate.verify(certificate.getPublicKey());
        certificate.checkValidity(Date.from(NOW));
        // RFC 5280, 4.1.2.5: 99991231235959Z says that there is no well-defined end
        assertEquals(
                Instant.parse("9999-12-31T23:59:59Z"), certificate.getNotAfter().toInstant());
        assertEquals(3, certificate.getVersion());
    }

    @Test
    void the_fingerprint_is_the_digest_of_the_certificate() throws Exception {
        ShopKey key = ShopKey.in(directory.resolve("key.p12"), NOW);
        byte[] digest =
                MessageDigest.getInstance("SHA-256").digest(key.certificate().getEncoded());
        assertEquals(HexFormat.of().formatHex(digest), key.fingerprint().hex());
    }

    @Test
    void a_fingerprint_is_read_as_it_is_shown() {
        Fingerprint fingerprint = ShopKey.in(directory.resolve("key.p12"), NOW).fingerprint();
        assertEquals(Optional.of(fingerprint), Fingerprint.parse(fingerprint.toString()));
        assertEquals(
                Optional.of(fingerprint), Fingerprint.parse(fingerprint.hex().toUpperCase(java.util.Locale.ROOT)));
        assertEquals(Optional.empty(), Fingerprint.parse(fingerprint.hex().substring(1)));
        assertTrue(fingerprint.toString().length() < 80, "one line of the narrowest terminal");
    }

    @Test
    void a_file_that_is_no_key_is_told_in_one_line() throws Exception {
        Path file = directory.resolve("key.p12");
        Files.writeString(file, "no key", StandardCharsets.UTF_8);
        WireFailure failure = assertThrows(WireFailure.class, () -> ShopKey.in(file, NOW));
        assertEquals(WireFailure.Kind.FILE, failure.kind());
        assertEquals(1, failure.getMessage().lines().count());
        assertEquals("no key", Files.readString(file), "what is there is not overwritten");
    }
}
