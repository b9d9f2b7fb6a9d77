package org.shedboard.wire;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.security.GeneralSecurityException;
import java.security.cert.CertificateException;
import java.security.cert.X509Certificate;
import java.util.function.Predicate;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManager;
import javax.net.ssl.X509TrustManager;

/** A terminal's way to a server whose key it knows. Whoever answers with another key learns nothing, not even the name. */
public final class Tunnel {
    static final String PROTOCOL = "TLSv1.3";
    static final String GREETING = "shedboard 1";
    static final int LET_IN = 1;
    /** What nobody has. */
    private static final String NOTHING = "nothing";

    private static final int CONNECT_MILLIS = 4000;
    private static final int ANSWER_MILLIS = 20_000;

    private final String host;
    private final int port;
    private final Ticket ticket;

    public Tunnel(String host, int port, Ticket ticket) {
        this.host = host;
        this.port = port;
        this.ticket = ticket;
    }

    /** The fingerprint of whoever answers there. Nothing is said to them. */
    public static Fingerprint lookAt(String host, int port) {
        Seeing seeing = new Seeing(any -> true);
        try (SSLSocket socket = connect(host, port, seeing)) {
            socket.startHandshake();
            return seeing.seen;
        } catch (IOException problem) {
            throw unreachable(host, port, problem);
        }
    }

    /**
     * A connection to what the server has under this name.
     *
     * @param kind what is wanted of the server
     */
    public Socket open(String kind) {
        Seeing seeing = new Seeing(ticket.pinned()::equals);
        SSLSocket socket = tryConnect(seeing);
        try {
            socket.startHandshake();
            expectLetIn(socket, kind);
            socket.setSoTimeout(0);
            return socket;
        } catch (SSLException problem) {
            Splice.close(socket);
            throw seeing.isWrong ? wrongKey(seeing.seen) : unreachable(host, port, problem);
        } catch (IOException problem) {
            Splice.close(socket);
            throw unreachable(host, port, problem);
        } catch (WireFailure failure) {
            Splice.close(socket);
            throw failure;
        }
    }

    /** Fails unless this key, name and password are the server's. */
    public void check() {
        Splice.close(open(NOTHING));
    }

    private SSLSocket tryConnect(Seeing seeing) {
        try {
            return connect(host, port, seeing);
        } catch (IOException problem) {
            throw unreachable(host, port, problem);
        }
    }

    private static SSLSocket connect(String host, int port, Seeing seeing) throws IOException {
        Socket plain = new Socket();
        try {
            plain.connect(new InetSocketAddress(host, port), CONNECT_MILLIS);
            plain.setTcpNoDelay(true);
            plain.setKeepAlive(true);
            plain.setSoTimeout(ANSWER_MILLIS);
            return (SSLSocket) seeing.context().getSocketFactory().createSocket(plain, host, port, true);
        } catch (IOException problem) {
            Splice.close(plain);
            throw problem;
        }
    }

    private void expectLetIn(Socket socket, String kind) throws IOException {
        socket.getOutputStream().write(words(kind));
        int answer = socket.getInputStream().read();
        if (answer < 0) {
            throw new EOFException("the connection ended before there was an answer");
        }
        if (answer != LET_IN) {
            throw new WireFailure(
                    WireFailure.Kind.WRONG_PASSWORD,
                    "the server at %s does not take the name and password kept here; join it again"
                            .formatted(at(host, port)));
        }
    }

    /** In one piece, so that they go out as one. */
    private byte[] words(String kind) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream words = new DataOutputStream(bytes);
        words.writeUTF(GREETING);
        words.writeUTF(ticket.credentials().name());
        words.writeUTF(ticket.credentials().password());
        words.writeUTF(kind);
        return bytes.toByteArray();
    }

    private WireFailure wrongKey(Fingerprint seen) {
        return new WireFailure(
                WireFailure.Kind.WRONG_KEY,
                "whoever answers at %s has not the key this terminal knows but %s; if the server has a new one, join it again"
                        .formatted(at(host, port), seen));
    }

    private static WireFailure unreachable(String host, int port, IOException problem) {
        return new WireFailure(
                WireFailure.Kind.UNREACHABLE,
                "no server answers at %s; see that it runs there".formatted(at(host, port)),
                problem);
    }

    private static String at(String host, int port) {
        return "%s:%s".formatted(host.contains(":") ? "[" + host + "]" : host, Integer.toString(port));
    }

    /** Sees whose certificate it is; that they hold its key the handshake itself proves. */
    private static final class Seeing implements X509TrustManager {
        private final Predicate<Fingerprint> isKnown;
        private Fingerprint seen;
        private boolean isWrong;

        Seeing(Predicate<Fingerprint> isKnown) {
            this.isKnown = isKnown;
        }

        SSLContext context() {
            try {
                SSLContext context = SSLContext.getInstance(PROTOCOL);
                context.init(null, new TrustManager[] {this}, null);
                return context;
            } catch (GeneralSecurityException problem) {
                throw new IllegalStateException("every Java speaks " + PROTOCOL, problem);
            }
        }

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String type) throws CertificateException {
            seen = Fingerprint.of(chain[0]);
            isWrong = !isKnown.test(seen);
            if (isWrong) {
                throw new CertificateException("another key");
            }
        }

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String type) throws CertificateException {
            throw new CertificateException("terminals show no certificates");
        }

        @Override
        public X509Certificate[] getAcceptedIssuers() {
            return new X509Certificate[0];
        }
    }
}
