package org.shedboard.store;

import java.io.EOFException;
import java.io.IOException;
import java.net.SocketException;
import java.nio.channels.ClosedChannelException;
import java.nio.file.AccessDeniedException;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.postgresql.util.PSQLException;

/** The records cannot be reached, read or changed; the message is one line and says how to go on. */
public final class StoreFailure extends RuntimeException {
    /** What is in the way. */
    public enum Kind {
        /** There are no records in this home. */
        NO_SHOP,
        /** A new shop was asked for where there is one. */
        SHOP_EXISTS,
        /** The path of the home cannot be used. */
        BAD_HOME,
        /** The records were written by a newer program. */
        NEWER,
        /** The records were written by an older program, and are only looked at. */
        OLDER,
        /** A migration that was applied is not the one this program has. */
        ALTERED,
        /** Another program has the file open and does not answer, or no server does. */
        UNREACHABLE,
        /** A server does not let this terminal in, or not do this. */
        NOT_LET_IN,
        /** The file, or a row in it, cannot be read. */
        DAMAGED,
        DISK_FULL,
        /** The file could not be written or read for another reason. */
        DISK_FAILS,
        /** A file that was to be loaded or restored is not what it should be. */
        BAD_FILE,
        /** The file, or its directory, may not be written to. */
        READ_ONLY,
        /** The file is not where it was any more. */
        VANISHED,
        /** There is nothing to go back to. */
        NO_BACKUP,
        /** Where copies of backups go is not there. */
        NO_SECOND_PLACE,
        /** A change breaks a rule of the database that has a name. */
        CONSTRAINT,
        /** Somebody else is changing the records just now. */
        BUSY,
        /** The address of a database cannot be used. */
        BAD_ADDRESS,
        /** A database does not let us in, or not do what we have to. */
        REFUSED,
        /** A database would not keep safe, or not as it is, what is saved there. */
        UNSAFE,
        /** The connection to the owner of the file, or to the database, broke; the store goes on by itself where it can. */
        BROKEN,
        /** The store was opened to look only. */
        LOOK_ONLY,
        OTHER
    }

    private static final long serialVersionUID = 1L;

    /** Names of constraints as H2 quotes them. */
    private static final Pattern NAME = Pattern.compile("\"(?:PUBLIC\\.)?(\\w+)");

    /** What befell the owner of the file comes to a guest without its cause, as the cause's name in the sentence. */
    private static final Pattern CUT_OFF =
            Pattern.compile("java\\.(io\\.EOF|net\\.Socket|nio\\.channels\\.ClosedChannel)Exception");

    private static final int IN_USE = 90020;
    private static final int NOT_FOUND = 90146;
    private static final int LOCK_TIMEOUT = 50200;
    private static final int NO_RIGHT = 90096;
    private static final int NO_ADMINISTRATOR = 90040;
    /** What H2 says of whatever it did not foresee, which in practice is its file. */
    private static final int GENERAL = 50000;

    /** The driver's own: a password is asked for, and it knows none. */
    private static final String NO_PASSWORD = "08004";

    private final Kind kind;
    private final String constraint;

    StoreFailure(Kind kind, String message) {
        this(kind, message, null);
    }

    StoreFailure(Kind kind, String message, Throwable cause) {
        this(kind, "", message, cause);
    }

    private StoreFailure(Kind kind, String constraint, String message, Throwable cause) {
        super(message, cause);
        this.kind = kind;
        this.constraint = constraint;
    }

    public Kind kind() {
        return kind;
    }

    /** Name of the constraint that a change would have broken, in small letters. */
    public Optional<String> constraint() {
        return Optional.of(constraint).filter(name -> !name.isEmpty());
    }

    boolean is(Kind other) {
        return kind == other;
    }

    /** What a file holds that can be read and makes no sense. */
    static StoreFailure damaged(Throwable problem) {
        return new StoreFailure(Kind.DAMAGED, sentence(Kind.DAMAGED, ""), problem);
    }

    /** What the database does not know how to say of a file that it is only just opening is damage of that file. */
    StoreFailure whileOpening() {
        boolean isOdd = kind == Kind.OTHER && getCause() instanceof SQLException;
        return isOdd ? damaged(getCause()) : this;
    }

    /** Whether nothing more can be had over the link on which this happened. */
    boolean spoilsLink() {
        return kind == Kind.BROKEN || kind == Kind.DISK_FULL || kind == Kind.DISK_FAILS || kind == Kind.VANISHED;
    }

    /** Whether the same work may well succeed when done again from the start. */
    boolean isConflict() {
        return hasState("40001", "40P01");
    }

    /** Whether a table that was asked for is not there, in the words of H2 and of PostgreSQL. */
    boolean isMissingTable() {
        return hasState("42S02", "42S03", "42S04", "42P01");
    }

    private boolean hasState(String... states) {
        return getCause() instanceof SQLException cause && List.of(states).contains(cause.getSQLState());
    }

    static StoreFailure from(SQLException problem) {
        String state = Optional.ofNullable(problem.getSQLState()).orElse("");
        if (state.startsWith("23")) {
            String constraint = constraintOf(problem);
            String message = "the records do not allow this (%s)".formatted(constraint);
            return new StoreFailure(Kind.CONSTRAINT, constraint, message, problem);
        }
        Kind kind = kindOf(problem, state);
        return new StoreFailure(kind, sentence(kind, problem.getMessage()), problem);
    }

    /** Of a file of ours that is not the database's. */
    static StoreFailure from(IOException problem) {
        String message = String.valueOf(problem.getMessage());
        Kind kind = kindOf(problem, message);
        return new StoreFailure(kind, sentence(kind, message), problem);
    }

    private static Kind kindOf(IOException problem, String message) {
        if (saysFull(message)) {
            return Kind.DISK_FULL;
        }
        if (isForbidden(problem)) {
            return Kind.READ_ONLY;
        }
        return problem instanceof ClosedChannelException ? Kind.BROKEN : Kind.DISK_FAILS;
    }

    /** Whether a file may not be written to, or not even read, as the system says it. */
    static boolean isForbidden(Throwable cause) {
        String message = String.valueOf(cause.getMessage());
        return cause instanceof AccessDeniedException
                || message.contains("Permission denied")
                || message.contains("Read-only file system")
                || message.contains("read only");
    }

    private static boolean saysFull(String message) {
        return message.contains("No space left") || message.contains("not enough space");
    }

    /** PostgreSQL says it apart from its sentence, which may be in any language and begins with the table. */
    private static String constraintOf(SQLException problem) {
        for (Throwable cause : problem) {
            if (cause instanceof PSQLException refused && refused.getServerErrorMessage() != null) {
                return Optional.ofNullable(refused.getServerErrorMessage().getConstraint())
                        .orElse("");
            }
        }
        Matcher name = NAME.matcher(problem.getMessage());
        return name.find() ? name.group(1).toLowerCase(Locale.ROOT) : "";
    }

    private static Kind kindOf(SQLException problem, String state) {
        Kind ofFile = kindOfFileFailure(problem);
        if (ofFile != Kind.OTHER) {
            return ofFile;
        }
        Kind ofState = kindOf(state);
        return ofState != Kind.OTHER ? ofState : kindOf(problem.getErrorCode());
    }

    /** What PostgreSQL says (its manual's appendix "PostgreSQL Error Codes"); of H2's own states only those of class 08 are among these. */
    private static Kind kindOf(String state) {
        return switch (state) {
            // idle in a transaction, ended by an administrator, by a crash, not ready yet
            case "25P03", "57P01", "57P02", "57P03" -> Kind.BROKEN;
            case "55P03" -> Kind.BUSY;
            case "53100" -> Kind.DISK_FULL;
            case "58030" -> Kind.DISK_FAILS;
            case "XX001", "XX002" -> Kind.DAMAGED;
            // wrong name or password, no right, no such database, too many connections
            case NO_PASSWORD, "28000", "28P01", "42501", "3D000", "53300" -> Kind.REFUSED;
            default -> state.startsWith("08") ? Kind.BROKEN : Kind.OTHER;
        };
    }

    private static Kind kindOf(int errorCode) {
        return switch (errorCode) {
            case NOT_FOUND -> Kind.NO_SHOP;
            case IN_USE, LOCK_TIMEOUT -> Kind.BUSY;
            case NO_RIGHT, NO_ADMINISTRATOR -> Kind.NOT_LET_IN;
            // the last: a row holds what its column cannot
            case 90030, 90048, 22018 -> Kind.DAMAGED;
            case 90067, 90098, 90121 -> Kind.BROKEN;
            // the first two: reading or writing failed
            case 90028, 90031, GENERAL -> Kind.DISK_FAILS;
            default -> Kind.OTHER;
        };
    }

    /**
     * H2 wraps what befell its file several times over. A file that was closed under it, or that it stopped waiting for because of
     * an interrupt, is opened again and no harm done; nor is any when the owner of the file goes in the middle of an answer to a guest.
     */
    private static Kind kindOfFileFailure(SQLException problem) {
        // goes through the causes, and through the failures chained behind that of a batch with their causes
        for (Throwable cause : problem) {
            String message = String.valueOf(cause.getMessage());
            if (isForbidden(cause)) {
                return Kind.READ_ONLY;
            }
            if (saysFull(message)) {
                return Kind.DISK_FULL;
            }
            if (message.contains("File corrupted")
                    || message.contains("Unable to read the page")
                    || message.contains("not found in primary index")) {
                return Kind.DAMAGED;
            }
            if (cause instanceof ClosedChannelException
                    || cause instanceof InterruptedException
                    || cause instanceof EOFException
                    || cause instanceof SocketException
                    || CUT_OFF.matcher(message).find()) {
                return Kind.BROKEN;
            }
        }
        return Kind.OTHER;
    }

    private static String sentence(Kind kind, String said) {
        return switch (kind) {
            case NO_SHOP -> "there is no shop here";
            case BUSY -> "somebody else is changing the records; try again";
            case DAMAGED -> "the records are damaged; go back to a backup: shedboard restore newest";
            case DISK_FULL -> "the disk is full; nothing can be saved until there is room";
            case READ_ONLY -> "the file may not be written to; make its disk writable, or start as its owner";
            case DISK_FAILS -> "the disk does not do what it should; look at it before going on";
            case REFUSED ->
                "the database refuses us: %s (passwords are read from PGPASSWORD or ~/.pgpass)"
                        .formatted(firstLine(said));
            case BROKEN -> "the connection to the records broke";
            case NOT_LET_IN -> "no terminal may do this; do it at the machine that has the records";
            default -> "the database said: " + firstLine(said);
        };
    }

    private static String firstLine(String said) {
        return said.lines().findFirst().orElse("nothing").replaceAll("\\.$", "");
    }
}
