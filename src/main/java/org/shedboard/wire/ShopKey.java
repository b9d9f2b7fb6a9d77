package org.shedboard.wire;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import org.shedboard.disk.OwnersFile;

/** The key by which a shop's server proves that it is this shop's: made once, and kept where only its owner can read it. */
public final class ShopKey {
    private static final String ENTRY = "shop";
    /** What the format wants; it guards nothing, the file's permissions do. */
    private static final char[] FORMALITY = "shedboard".toCharArray();
    /** For terminals whose clock is behind. */
    private static final Duration BEFORE = Duration.ofDays(1);

    private final KeyStore store;
    private final X509Certificate certificate;

    private ShopKey(KeyStore store) throws GeneralSecurityException {
        this.store = store;
        this.certificate = (X509Certificate) store.getCertificate(ENTRY);
        if (certificate == null) {
            throw new GeneralSecurityException("there is no key in it");
        }
    }

    /** The key in this file, made at this moment when there is none. */
    public static ShopKey in(Path file, Instant now) {
        try {
            if (!Files.exists(file)) {
                OwnersFile.write(file, bytes(made(now)));
            }
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(new ByteArrayInputStream(Files.readAllBytes(file)), FORMALITY);
            return new ShopKey(store);
        } catch (IOException | GeneralSecurityException problem) {
            throw new WireFailure(
                    WireFailure.Kind.FILE,
                    "the key in %s cannot be used (%s); move it away to have another one made"
                            .formatted(file, problem.getMessage()),
                    problem);
        }
    }

    private static KeyStore made(Instant now) throws GeneralSecurityException, IOException {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec("secp256r1"));
        KeyPair pair = generator.generateKeyPair();
        Certificate[] chain = {SelfSigned.of(pair, now.minus(BEFORE))};
        PrivateKey key = pair.getPrivate();
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, FORMALITY);
        store.setKeyEntry(ENTRY, key, FORMALITY, chain);
        return store;
    }

    private static byte[] bytes(KeyStore store) throws GeneralSecurityException, IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        store.store(bytes, FORMALITY);
        return bytes.toByteArray();
    }

    public Fingerprint fingerprint() {
        return Fingerprint.of(certificate);
    }

    X509Certificate certificate() {
        return certificate;
    }

    /** What a server proves itself with. */
    SSLContext context() {
        try {
            KeyManagerFactory keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
            keys.init(store, FORMALITY);
            SSLContext context = SSLContext.getInstance(Tunnel.PROTOCOL);
            context.init(keys.getKeyManagers(), null, null);
            return context;
        } catch (GeneralSecurityException problem) {
            throw new IllegalStateException("a key of ours cannot be used", problem);
        }
    }
}
