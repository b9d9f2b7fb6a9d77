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
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopKeyTest {

    @TempDir
    private Path directory;

    @Test
    void a_key_is_made_once_and_then_kept() {
        Path file = directory.resolve("serve").resolve("key.p12");
        Fingerprint made = ShopKey.in(file).fingerprint();
        assertEquals(made, ShopKey.in(file).fingerprint());
        assertNotEquals(made, ShopKey.in(directory.resolve("other.p12")).fingerprint());
    }

    @Test
    void a_key_is_for_its_owners_eyes_only() throws Exception {
        Assumptions.assumeTrue(
                directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Path file = directory.resolve("serve").resolve("key.p12");
        ShopKey.in(file);
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file.getParent())));
    }

    @Test
    void its_certificate_is_signed_by_itself_and_ends_after_all_who_use_it() throws Exception {
        X509Certificate certificate = ShopKey.in(directory.resolve("key.p12")).certificate();
        certificate.verify(certificate.getPublicKey());
        certificate.checkValidity(Date.from(Instant.now().minus(Duration.ofHours(23))));
        certificate.checkValidity(Date.from(Instant.now().plus(Duration.ofDays(99 * 365))));
        assertEquals("EC", certificate.getPublicKey().getAlgorithm());
        assertEquals(3, certificate.getVersion());
    }

    @Test
    void the_fingerprint_is_the_digest_of_the_certificate() throws Exception {
        ShopKey key = ShopKey.in(directory.resolve("key.p12"));
        byte[] digest =
                MessageDigest.getInstance("SHA-256").digest(key.certificate().getEncoded());
        assertEquals(HexFormat.of().formatHex(digest), key.fingerprint().hex());
    }

    @Test
    void a_fingerprint_is_read_as_it_is_shown() {
        Fingerprint fingerprint = ShopKey.in(directory.resolve("key.p12")).fingerprint();
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
        WireFailure failure = assertThrows(WireFailure.class, () -> ShopKey.in(file));
        assertEquals(WireFailure.Kind.FILE, failure.kind());
        assertEquals(1, failure.getMessage().lines().count());
        assertEquals("no key", Files.readString(file), "what is there is not overwritten");
    }
}
