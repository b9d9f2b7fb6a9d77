package org.shedboard.wire;

/** The way to a server cannot be had; the message is one line and says how to go on. */
public final class WireFailure extends RuntimeException {
    /** What is in the way. */
    public enum Kind {
        /** Nobody answers at that address. */
        UNREACHABLE,
        /** Somebody answers with another key than the one that is known. */
        WRONG_KEY,
        /** The name or the password is not the server's. */
        WRONG_PASSWORD,
        /** A file of a key or a password cannot be read or written. */
        FILE
    }

    private static final long serialVersionUID = 1L;

    private final Kind kind;

    WireFailure(Kind kind, String message) {
        this(kind, message, null);
    }

    WireFailure(Kind kind, String message, Throwable cause) {
        super(message, cause);
        this.kind = kind;
    }

    public Kind kind() {
        return kind;
    }
}
