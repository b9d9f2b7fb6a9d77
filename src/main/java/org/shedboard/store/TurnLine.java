package org.shedboard.store;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Supplier;

/** Where a guest asks the owner of the file for its turns, one at a time; opened when the first is asked for. */
final class TurnLine {
    private final Way way;
    private volatile Optional<SyncLine> line = Optional.empty();
    private volatile boolean isClosed;

    TurnLine(Way way) {
        this.way = way;
    }

    /**
     * Does the work when this guest's turn has come.
     *
     * @throws IOException when nobody answers; nothing is done then
     */
    synchronized <T> T during(Supplier<T> work) throws IOException {
        take();
        try {
            return work.get();
        } finally {
            over();
        }
    }

    private void take() throws IOException {
        Optional<SyncLine> last = line;
        if (last.isPresent() && isMine(last.get())) {
            return;
        }
        if (isClosed) {
            throw new IOException("this guest has left");
        }
        // none so far, or the owner has given it up because the turn before took too long
        SyncLine another = SyncLine.open(way);
        line = Optional.of(another);
        if (!isMine(another)) {
            throw new IOException("no turn is given");
        }
    }

    private boolean isMine(SyncLine asked) {
        try {
            if (SyncServer.YOURS.equals(asked.ask(SyncServer.TURN))) {
                return true;
            }
        } catch (IOException gone) {
            // hung up below
        }
        hangUp();
        return false;
    }

    private void over() {
        Optional<SyncLine> mine = line;
        try {
            if (mine.isPresent()) {
                mine.get().say(SyncServer.OVER);
            }
        } catch (IOException gone) {
            hangUp();
        }
    }

    /** The owner takes that for the end of a turn too. */
    private void hangUp() {
        Optional<SyncLine> last = line;
        line = Optional.empty();
        try {
            if (last.isPresent()) {
                last.get().close();
            }
        } catch (IOException closed) {
            // it was closed already
        }
    }

    void close() {
        isClosed = true;
        hangUp();
    }
}
