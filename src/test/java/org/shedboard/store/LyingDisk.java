package org.shedboard.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.h2.store.fs.FileBaseDefault;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * The disk beneath the database and the files of changes, with a power cut at any moment: of what was not forced, some writes are there
 * afterwards, some are not and some in part, in no order. It can be full too.
 */
public final class LyingDisk extends FilePathWrapper {
    private static final String SCHEME = "lying";
    private static final int SECTOR = 512;
    /** Files by path, of the one directory that is watched. */
    private static final Map<String, Shadow> SHADOWS = new LinkedHashMap<>();

    private static Path watched = Path.of("/nowhere");
    private static volatile boolean full;

    /** For the database, which makes one for each path. */
    public LyingDisk() {}

    /** Puts it beneath all files that the database opens in this directory from now on. */
    static void beneath(Path directory) {
        try {
            watched = directory.toRealPath();
            SHADOWS.clear();
            FilePath.register(new LyingDisk());
            Home.putOn(SCHEME);
        } catch (IOException problem) {
            throw new AssertionError(problem);
        }
    }

    /** Everything is on a usual disk again. */
    static void takeAway() {
        full = false;
        Home.putOn("file");
    }

    static void fill(boolean isFull) {
        full = isFull;
    }

    /** Leaves in another directory what a power cut at this moment would. */
    static void cutPower(Path to, Random random) throws IOException {
        synchronized (SHADOWS) {
            for (Map.Entry<String, Shadow> entry : SHADOWS.entrySet()) {
                Path file = to.resolve(watched.relativize(Path.of(entry.getKey())));
                Files.createDirectories(file.getParent());
                Files.write(file, entry.getValue().afterPowerCut(random));
            }
        }
    }

    @Override
    public String getScheme() {
        return SCHEME;
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        FileChannel disk = super.open(mode);
        Path path = Path.of(getBase().toString());
        if (!path.startsWith(watched) || mode.equals("r")) {
            return disk;
        }
        synchronized (SHADOWS) {
            byte[] there = Files.readAllBytes(path);
            return new Lying(disk, SHADOWS.computeIfAbsent(path.toString(), file -> new Shadow(there)));
        }
    }

    /** What of a file is safe, and what was done to it since. */
    private static final class Shadow {
        private record Write(long at, byte[] bytes) {}

        private byte[] forced;
        private final List<Write> open = new ArrayList<>();

        Shadow(byte[] there) {
            forced = there;
        }

        void write(long at, byte[] bytes) {
            open.add(new Write(at, bytes));
        }

        /** A write of nothing cuts the file off there. */
        private static byte[] with(byte[] before, Write write) {
            if (write.bytes().length == 0) {
                return Arrays.copyOf(before, (int) write.at());
            }
            int end = (int) write.at() + write.bytes().length;
            byte[] after = Arrays.copyOf(before, Math.max(before.length, end));
            System.arraycopy(write.bytes(), 0, after, (int) write.at(), write.bytes().length);
            return after;
        }

        void force() {
            for (Write write : open) {
                forced = with(forced, write);
            }
            open.clear();
        }

        byte[] afterPowerCut(Random random) {
            byte[] left = forced;
            for (Write write : open) {
                int fate = random.nextInt(3);
                int sectors = write.bytes().length / SECTOR;
                if (fate == 0) {
                    left = with(left, write);
                } else if (fate == 1 && sectors > 0) {
                    int length = SECTOR * (1 + random.nextInt(sectors));
                    left = with(left, new Write(write.at(), Arrays.copyOf(write.bytes(), length)));
                }
            }
            return left;
        }
    }

    private static final class Lying extends FileBaseDefault {
        private final FileChannel disk;
        private final Shadow shadow;

        Lying(FileChannel disk, Shadow shadow) {
            this.disk = disk;
            this.shadow = shadow;
        }

        @Override
        public int write(ByteBuffer source, long at) throws IOException {
            if (full) {
                throw new IOException("No space left on device");
            }
            byte[] bytes = new byte[source.remaining()];
            source.duplicate().get(bytes);
            synchronized (SHADOWS) {
                int length = disk.write(source, at);
                shadow.write(at, Arrays.copyOf(bytes, length));
                return length;
            }
        }

        @Override
        public int read(ByteBuffer target, long at) throws IOException {
            return disk.read(target, at);
        }

        @Override
        protected void implTruncate(long size) throws IOException {
            synchronized (SHADOWS) {
                if (size < disk.size()) {
                    disk.truncate(size);
                    shadow.write(size, new byte[0]);
                }
            }
        }

        @Override
        public void force(boolean metaData) throws IOException {
            synchronized (SHADOWS) {
                disk.force(metaData);
                shadow.force();
            }
        }

        @Override
        public long size() throws IOException {
            return disk.size();
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return disk.tryLock(position, size, shared);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            disk.close();
        }
    }
}
