package org.shedboard.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.h2.store.fs.FilePath;
import org.shedboard.disk.OwnersEyes;

/**
 * Writes each change to the day's file, and has it on disk before anybody is told that the change is saved. Changes come by way of the
 * records ({@link ChangeLines}), since guests commit on their own; so a change that was committed and not yet written when all ended is
 * written by whoever has the file open next.
 */
final class ChangeWriter implements AutoCloseable {
    /** Lines that are written stand in the records until there are so many, which costs less than taking each out by itself. */
    private static final int LEFT = 64;

    private final Home home;
    private final ChangeFiles files;
    /** In whose days the files are counted; asked for with the first change, since a new shop comes with that. */
    private Optional<ZoneId> zone = Optional.empty();

    private long written;
    private long dropped;
    private Path path;
    private FileChannel channel;

    private ChangeWriter(Home home, ChangeFiles files, long written) {
        this.home = home;
        this.files = files;
        this.written = written;
    }

    /**
     * Goes on where the files of this home end. Where they hold changes that the records have lost, as a damaged file or a disk that lied
     * can leave it, these are made again; files of other records are put aside.
     *
     * @param isNew whether the records were only just made, and know of no changes
     */
    static ChangeWriter ready(Home home, Sql sql, boolean isNew) {
        ChangeFiles files = new ChangeFiles(home);
        if (isNew) {
            files.setAside();
        }
        long newest = files.newest().map(last -> shared(sql, files, last)).orElse(0L);
        return new ChangeWriter(home, files, newest);
    }

    /** The number of the last change that records and files have both, 0 where these are not the files of these records. */
    private static long shared(Sql sql, ChangeFiles files, ChangeLine last) {
        if (sql.inOne(one -> Journal.has(one, last.id(), last.changeId())) || catchesUp(sql, files, last)) {
            return last.id();
        }
        files.setAside();
        return 0;
    }

    private static boolean catchesUp(Sql sql, ChangeFiles files, ChangeLine last) {
        long newest = sql.inOne(Journal::newest);
        boolean isOlder = newest < last.id()
                && (newest == 0
                        || files.find(newest)
                                .filter(line -> sql.inOne(one -> Journal.has(one, newest, line.changeId())))
                                .isPresent());
        if (!isOlder) {
            return false;
        }
        long reached = sql.inOne(one -> new Replay(one).all(files.after(newest)));
        new Replay(sql).goOnNumbering();
        return reached == last.id();
    }

    /** Writes what the records have and the files have not; on disk when it returns. */
    void write(Sql sql) {
        List<ChangeLine> lines = sql.inOne(one -> ChangeLines.after(one, written));
        if (lines.isEmpty()) {
            return;
        }
        ZoneId ours = zone.orElseGet(() -> sql.inOne(ChangeFiles::zone));
        zone = Optional.of(ours);
        try {
            for (ChangeLine line : lines) {
                append(line, files.of(LocalDate.ofInstant(line.at(), ours)));
            }
            channel.force(false);
        } catch (IOException problem) {
            throw StoreFailure.from(problem);
        }
        written = lines.get(lines.size() - 1).id();
    }

    private void append(ChangeLine line, Path wanted) throws IOException {
        if (!wanted.equals(path) || !Files.exists(path)) {
            open(wanted);
        }
        ByteBuffer bytes = ByteBuffer.wrap((line.text() + "\n").getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }

    private void open(Path wanted) throws IOException {
        close();
        home.createChanges();
        if (!Files.exists(wanted)) {
            Files.createFile(wanted, OwnersEyes.ofFile());
        }
        // by way of the database's own file layer, beneath which tests put a disk that loses what was not forced
        channel = FilePath.get(Home.onLayer(wanted.toString())).open("rw");
        channel.position(channel.size());
        path = wanted;
        Arrival.force(home.changes());
        Arrival.force(home.directory());
    }

    /** Takes out of the records what stands in the files, once it is worth it. */
    void dropWritten(Sql sql) {
        if (written - dropped >= LEFT) {
            dropAllWritten(sql);
        }
    }

    void dropAllWritten(Sql sql) {
        ChangeLines.drop(sql, written);
        dropped = written;
    }

    @Override
    public void close() throws IOException {
        if (channel != null) {
            channel.force(false);
            channel.close();
            channel = null;
            path = null;
        }
    }
}
