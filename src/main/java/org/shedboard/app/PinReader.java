package org.shedboard.app;

import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Optional;
import org.shedboard.app.command.CannotDo;
import org.shedboard.grid.TextWidth;
import org.shedboard.shop.Pin;
import org.shedboard.words.Words;

/** Asks for PINs: at a console, where what is typed is not shown, or else as lines of what is piped in. */
final class PinReader {
    /** Longer than any PIN; of a longer line only so much is kept, which is no PIN either. */
    private static final int LONGEST_LINE = 64;

    private final Optional<Hidden> console;
    private final InputStream piped;

    private PinReader(Optional<Hidden> console, InputStream piped) {
        this.console = console;
        this.piped = piped;
    }

    /** Where a line can be typed that is not shown. */
    @FunctionalInterface
    interface Hidden {
        /** What was typed, for whoever asked to wipe; empty at the end of all input. */
        Optional<char[]> ask(String prompt);

        static Hidden at(Console console) {
            return prompt -> Optional.ofNullable(console.readPassword("%s", prompt));
        }
    }

    static PinReader of(Surroundings around) {
        return new PinReader(around.console(), around.in());
    }

    /** The PIN that somebody of this name has. */
    Pin ask(String name) {
        return read(Words.say("pin.ask", name));
    }

    /** The PIN that somebody of this name is to have; where it is typed unseen, it is typed twice. */
    Pin askNew(String name) {
        Pin first = read(Words.say("pin.ask_new", name, Pin.SHORTEST, Pin.LONGEST));
        if (console.isPresent()) {
            expectAgain(first);
        }
        return first;
    }

    private void expectAgain(Pin first) {
        try (Pin second = read(Words.say("pin.ask_again"))) {
            if (!first.hasSameDigitsAs(second)) {
                throw new CannotDo("pin_differs");
            }
        } catch (CannotDo cannot) {
            first.close();
            throw cannot;
        }
    }

    private Pin read(String prompt) {
        Optional<char[]> typed = console.isPresent() ? console.get().ask(TextWidth.shown(prompt) + " ") : line();
        return Pin.of(typed.orElseThrow(() -> new CannotDo("pin_missing")))
                .orElseThrow(() -> new CannotDo(PinWords.form()));
    }

    private Optional<char[]> line() {
        char[] line = new char[LONGEST_LINE];
        try {
            int count = fill(line);
            return count < 0 ? Optional.empty() : Optional.of(Arrays.copyOf(line, count));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } finally {
            Arrays.fill(line, '\0');
        }
    }

    /** How many characters the next line has; -1 when there is none. Each byte is taken for one: other than ASCII is no digit. */
    private int fill(char[] line) throws IOException {
        int count = 0;
        int next = piped.read();
        boolean isEnd = next < 0;
        while (next >= 0 && next != '\n') {
            if (next != '\r' && count < line.length) {
                line[count++] = (char) next;
            }
            next = piped.read();
        }
        return isEnd ? -1 : count;
    }
}
