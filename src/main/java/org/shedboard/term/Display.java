package org.shedboard.term;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.screen.Screen.RefreshType;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.Console;
import java.io.File;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Region;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;
import org.shedboard.look.Scheme;

/**
 * The full screen. One thread, always the same, asks its size and shows grids on it; keys and everything else that
 * happens to the window come to a listener from other threads. Closing gives the terminal back as it was; that may be
 * done from any thread, and twice.
 */
public final class Display implements AutoCloseable {
    private final Terminal terminal;
    private final TerminalScreen screen;
    private final Palette palette;
    private final AtomicBoolean closed = new AtomicBoolean();
    /** The shell had the terminal meanwhile. */
    private final AtomicBoolean resumed = new AtomicBoolean();
    /** What the window shows may not be what we painted. */
    private final AtomicBoolean stale = new AtomicBoolean(true);

    /** A full screen on any terminal; nothing is shown before {@link #show}. */
    public Display(Terminal terminal, Palette palette) throws IOException {
        this.terminal = terminal;
        this.palette = palette;
        this.screen = new TerminalScreen(terminal, palette.cell(' ', Style.NORMAL));
        screen.setCursorPosition(null);
        screen.startScreen();
    }

    /**
     * The full screen of the terminal that the program was started in.
     *
     * @param takesMouse whether the terminal tells where it is pointed at, instead of marking text there
     */
    public static Display open(Scheme scheme, boolean takesMouse) throws IOException {
        return new Display(new BoardTerminal(takesMouse), Palette.of(TerminalKind.ofProcess(), scheme));
    }

    /** Whether the program was started in a terminal that can show a full screen. */
    public static boolean isUsable() {
        return isUsable(System.getenv(), console().isPresent());
    }

    /** The terminal that the program was started in, to ask for single lines. */
    public static Optional<Console> console() {
        return Optional.ofNullable(System.console()).filter(Display::hasTerminal);
    }

    /** How large the terminal is that the program was started in, where it can be asked. */
    public static Optional<Size> measured() {
        try {
            Process stty = new ProcessBuilder("stty", "size")
                    .redirectInput(new File("/dev/tty"))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String said = new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).strip();
            stty.waitFor();
            return sizeOf(said);
        } catch (IOException none) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    /** @param said rows and columns, as the terminal's settings tell them */
    static Optional<Size> sizeOf(String said) {
        String[] both = said.split(" ");
        return said.matches("[1-9]\\d{0,3} [1-9]\\d{0,3}")
                ? Optional.of(new Size(Integer.parseInt(both[1]), Integer.parseInt(both[0])))
                : Optional.empty();
    }

    static boolean isUsable(Map<String, String> environment, boolean hasTerminal) {
        String term = environment.getOrDefault("TERM", "");
        return hasTerminal && !term.isBlank() && !term.equals("dumb");
    }

    /** From Java 22 on there is a console without a terminal too, and it can be asked. */
    private static boolean hasTerminal(Console console) {
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException olderJava) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException broken) {
            return false;
        }
    }

    /** From now on the listener is told what happens, from several threads; it shall only pass that on. */
    public void listen(Consumer<Event> listener) {
        terminal.addResizeListener((source, size) -> listener.accept(new Event.Resized(toSize(size))));
        ContinueSignal.onContinue(() -> {
            resumed.set(true);
            listener.accept(new Event.Continued());
        });
        Thread reader = new Thread(() -> read(listener), "keys");
        reader.setDaemon(true);
        reader.start();
    }

    /** How large the window is now. */
    public Size size() {
        if (screen.doResizeIfNecessary() != null) stale.set(true);
        return toSize(screen.getTerminalSize());
    }

    /** Paints what has changed since the last time, or everything where that is not sure. */
    public void show(Grid grid) throws IOException {
        if (closed.get()) return;
        if (resumed.getAndSet(false)) resume();
        Size size = size();
        for (int row = 0; row < size.rows(); row++) paint(grid, row, size.columns());
        screen.setCursorPosition(grid.cursor()
                .filter(cell -> size.region().contains(cell.column(), cell.row()))
                .map(cell -> new TerminalPosition(cell.column(), cell.row()))
                .orElse(null));
        screen.refresh(stale.getAndSet(false) ? RefreshType.COMPLETE : RefreshType.DELTA);
    }

    /** The next {@link #show} paints everything, whatever the window shows. */
    public void repaint() {
        stale.set(true);
    }

    /** The shell gets the terminal, and the program is stopped until the shell calls it back; then all is painted. */
    public void standAside() throws IOException {
        if (closed.get() || !(terminal instanceof BoardTerminal own)) return;
        own.standAside();
        StopSignal.stop();
        resumed.set(true);
    }

    @Override
    public void close() throws IOException {
        if (closed.getAndSet(true)) return;
        try {
            screen.stopScreen(false);
        } catch (IllegalStateException alreadyBack) {
            // when a signal ends the program, the terminal's own shutdown hook may have been first
        } finally {
            giveBack();
        }
    }

    private void giveBack() throws IOException {
        try {
            terminal.close();
        } catch (IllegalStateException programEnds) {
            // the terminal takes away its own shutdown hook, which it must not while hooks run; then that hook does it
        }
    }

    private void resume() throws IOException {
        if (terminal instanceof BoardTerminal own) own.resume();
        stale.set(true);
    }

    /** Left to right, because a cell that is set wipes a wide one that reaches into it. */
    private void paint(Grid grid, int row, int columns) {
        for (int column = 0; column < columns; column++) {
            if (!isDrawn(grid, column, row, columns)) screen.setCharacter(column, row, palette.cell(' ', Style.NORMAL));
            else if (!grid.isTail(column, row)) {
                screen.setCharacter(column, row, palette.cell(grid.glyph(column, row), grid.style(column, row)));
            }
        }
    }

    /** Whether the grid, which may be of another size, has a whole glyph there. */
    private static boolean isDrawn(Grid grid, int column, int row, int columns) {
        Region drawn = grid.size().region();
        if (!drawn.contains(column, row)) return false;
        boolean isCut = column + 1 == columns && drawn.contains(columns, row) && grid.isTail(columns, row);
        return !isCut;
    }

    private void read(Consumer<Event> listener) {
        try {
            KeyStroke stroke = terminal.readInput();
            while (stroke.getKeyType() != KeyType.EOF) {
                listener.accept(KeyTranslation.toEvent(stroke));
                stroke = terminal.readInput();
            }
        } catch (IOException cut) {
            // the same as its end
        }
        if (!closed.get()) listener.accept(new Event.Gone());
    }

    private static Size toSize(TerminalSize size) {
        return new Size(size.getColumns(), size.getRows());
    }
}
