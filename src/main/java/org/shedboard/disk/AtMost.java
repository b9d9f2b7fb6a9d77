package org.shedboard.disk;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * A stream that is read no further than its reader has room for: what comes from outside may be endless, or a few packed bytes that
 * unpack to more than the disk holds.
 */
public final class AtMost extends FilterInputStream {
    private final long most;
    private long taken;

    private AtMost(InputStream in, long most) {
        super(in);
        this.most = most;
    }

    /** There is more than may be read. */
    public static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;

        TooLarge(long most) {
            super("it is larger than the %s MB that are read".formatted(most >> 20));
        }
    }

    /** @param most bytes; one more of them, and reading fails */
    public static InputStream bytes(InputStream in, long most) {
        return new AtMost(in, most);
    }

    /**
     * One file in a packed one, by exactly this name. What a name in the packed file says of other directories is never followed, since
     * no file is written by such a name; how large a file says it is is not believed, its bytes are counted.
     */
    public static InputStream unpacked(ZipFile zip, String name, long most) throws IOException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null || entry.isDirectory()) {
            throw new IOException("there is no %s in it".formatted(name));
        }
        if (entry.getSize() > most) {
            throw new TooLarge(most);
        }
        return bytes(zip.getInputStream(entry), most);
    }

    @Override
    public int read() throws IOException {
        int single = super.read();
        return single < 0 ? single : counted(1, single);
    }

    @Override
    public int read(byte[] bytes, int from, int count) throws IOException {
        int read = super.read(bytes, from, count);
        return read < 0 ? read : counted(read, read);
    }

    /** What is passed over counts like what is read. */
    @Override
    public long skip(long count) throws IOException {
        long skipped = super.skip(count);
        counted(skipped, 0);
        return skipped;
    }

    @Override
    public boolean markSupported() {
        return false;
    }

    private int counted(long more, int answer) throws IOException {
        taken += more;
        if (taken > most) {
            throw new TooLarge(most);
        }
        return answer;
    }
}
