package org.shedboard.store;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.h2.security.SHA256;
import org.h2.util.StringUtils;

/**
 * The first thing that the database's driver says to its server: which versions it speaks, which database it wants and as whom. The
 * server's end of a tunnel reads a terminal's and says one of its own instead, so that a terminal cannot choose who it is, which database
 * it gets, or with what settings.
 *
 * <p>Written out as the TCP protocol of H2 2.4 has it; another version may have another one, so a test holds them together.
 *
 * @param database what the driver asks for
 */
record Knock(int lowest, int highest, String database) {
    /** Longer than any name or address in it; whoever says more is none of ours. */
    private static final int LONGEST = 2000;

    private static final int SETTINGS_AT_MOST = 50;
    private static final int NONE = -1;

    static Knock read(DataInputStream in) throws IOException {
        int lowest = in.readInt();
        int highest = in.readInt();
        String database = text(in);
        text(in);
        text(in);
        in.skipNBytes(size(in.readInt(), LONGEST));
        in.skipNBytes(size(in.readInt(), LONGEST));
        int settings = size(in.readInt(), SETTINGS_AT_MOST);
        for (int i = 0; i < settings; i++) {
            text(in);
            text(in);
        }
        return new Knock(lowest, highest, database);
    }

    /** The same versions, but this database, this user by a password like their name, and our settings. */
    byte[] as(String user, String wanted) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(lowest);
        out.writeInt(highest);
        write(out, wanted);
        write(out, "jdbc:h2:tcp://127.0.0.1/" + wanted);
        String name = StringUtils.toUpperEnglish(user);
        write(out, name);
        byte[] hash = SHA256.getKeyPasswordHash(name, user.toCharArray());
        out.writeInt(hash.length);
        out.write(hash);
        out.writeInt(NONE);
        out.writeInt(1);
        write(out, "LOCK_TIMEOUT");
        write(out, Guest.LOCK_MILLIS);
        return bytes.toByteArray();
    }

    private static String text(DataInputStream in) throws IOException {
        int length = size(in.readInt(), LONGEST);
        return new String(in.readNBytes(2 * length), StandardCharsets.UTF_16BE);
    }

    private static int size(int said, int most) throws IOException {
        if (said > most || said < NONE) {
            throw new IOException("that is no driver of the database");
        }
        return Math.max(said, 0);
    }

    private static void write(DataOutputStream out, String text) throws IOException {
        out.writeInt(text.length());
        out.writeChars(text);
    }
}
