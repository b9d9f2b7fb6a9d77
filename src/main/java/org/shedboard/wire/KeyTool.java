package org.shedboard.wire;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.List;
import org.shedboard.disk.OwnersEyes;

/**
 * Has keys made by the tool for them that every Java comes with. The certificate is signed by its own key and vouches for nobody; terminals
 * know it by its fingerprint, so that it has to end only after all who use it.
 */
final class KeyTool {
    private static final String NAME = "CN=shedboard";
    /** For terminals whose clock is behind. */
    private static final String BEGINS = "-1d";

    private static final String DAYS_IN_A_CENTURY = "36525";

    private KeyTool() {}

    /** A store in the form PKCS #12, with one key under that name. */
    static byte[] store(Path directory, String entry, String password) throws IOException, GeneralSecurityException {
        Files.createDirectories(directory, OwnersEyes.ofDirectory());
        Path apart = Files.createTempDirectory(directory, "key", OwnersEyes.ofDirectory());
        Path file = apart.resolve("key.p12");
        try {
            run(List.of(
                    Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                    "-genkeypair",
                    "-alias",
                    entry,
                    "-keyalg",
                    "EC",
                    "-groupname",
                    "secp256r1",
                    "-sigalg",
                    "SHA256withECDSA",
                    "-dname",
                    NAME,
                    "-startdate",
                    BEGINS,
                    "-validity",
                    DAYS_IN_A_CENTURY,
                    "-storetype",
                    "PKCS12",
                    "-keystore",
                    file.toString(),
                    "-storepass",
                    password));
            return Files.readAllBytes(file);
        } finally {
            Files.deleteIfExists(file);
            Files.delete(apart);
        }
    }

    private static void run(List<String> command) throws IOException, GeneralSecurityException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), Charset.defaultCharset());
        try {
            if (process.waitFor() != 0) {
                throw new GeneralSecurityException(
                        "none could be made: " + said.lines().findFirst().orElse("keytool says nothing"));
            }
        } catch (InterruptedException interrupt) {
            Thread.currentThread().interrupt();
            throw new GeneralSecurityException("interrupted while it was made", interrupt);
        }
    }
}
