package org.shedboard.wire;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import org.shedboard.disk.OwnersFile;

/** The key by which a shop's server proves that it is this shop's: made once, and kept where only its owner can read it. */
public final class ShopKey {
    private static final String ENTRY = "shop";
    /** What the format wants; it guards nothing, the file's permissions do. */
    private static final String FORMALITY = "shedboard";

    private final KeyStore store;
    private final X509Certificate certificate;

    private ShopKey(KeyStore store) throws GeneralSecurityException {
        this.store = store;
        this.certificate = (X509Certificate) store.getCertificate(ENTRY);
        if (certificate == null) {
            throw new GeneralSecurityException("there is no key in it");
        }
    }

    /** The key in this file, made when there is none. */
    public static ShopKey in(Path file) {
        try {
            if (!Files.exists(file)) {
                OwnersFile.write(file, KeyTool.store(file.toAbsolutePath().getParent(), ENTRY, FORMALITY));
            }
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(new ByteArrayInputStream(Files.readAllBytes(file)), FORMALITY.toCharArray());
            return new ShopKey(store);
        } catch (IOException | GeneralSecurityException problem) {
            throw new WireFailure(
                    WireFailure.Kind.FILE,
                    "the key in %s cannot be used (%s); move it away to have another one made"
                            .formatted(file, problem.getMessage()),
                    problem);
        }
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
            keys.init(store, FORMALITY.toCharArray());
            SSLContext context = SSLContext.getInstance(Tunnel.PROTOCOL);
            context.init(keys.getKeyManagers(), null, null);
            return context;
        } catch (GeneralSecurityException problem) {
            throw new IllegalStateException("a key of ours cannot be used", problem);
        }
    }
}
