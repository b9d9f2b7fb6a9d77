package org.shedboard.term;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.terminal.ansi.UnixTerminal;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * The terminal that the program was started in. Its output is buffered, because a write a cell is six times slower; it
 * finds its size by asking stty, because the other way waits for an answer to a question that is still in the buffer.
 */
class BoardTerminal extends UnixTerminal {
    private static final int OUTPUT_BYTES = 1 << 16;
    /** Longer than a sequence in two pieces takes on a slow line, shorter than anybody notices. */
    private static final int ESCAPE_GRACE_MILLISECONDS = 25;

    /** Still false while the superclass is being made, which calls methods of ours. */
    private boolean ready;
    /** A frame may be half painted when a signal ends the program; the rest of it must not reach the shell's screen. */
    private boolean givenBack;

    private final boolean takesMouse;

    /** @param takesMouse whether the terminal tells where it is pointed at, instead of marking text there */
    BoardTerminal(boolean takesMouse) throws IOException {
        this(new FileInputStream(FileDescriptor.in), new FileOutputStream(FileDescriptor.out), takesMouse);
    }

    BoardTerminal(InputStream in, OutputStream out, boolean takesMouse) throws IOException {
        super(
                new EscapeGrace(in, ESCAPE_GRACE_MILLISECONDS),
                new BufferedOutputStream(out, OUTPUT_BYTES),
                StandardCharsets.UTF_8,
                CtrlCBehaviour.TRAP);
        this.takesMouse = takesMouse;
        ready = true;
        makeAllKeysOrdinary();
    }

    /** Gives the terminal to the shell as the shell had it; {@link #resume} takes it back. */
    void standAside() throws IOException {
        exitPrivateMode();
        flush();
        restoreTerminalSettings();
    }

    /** Takes the terminal back after the shell had it; call before painting all of it. */
    void resume() throws IOException {
        makeAllKeysOrdinary();
        if (isGivenBack()) enterPrivateMode();
        setKeyModes();
        setCursorVisible(false);
    }

    private synchronized boolean isGivenBack() {
        return givenBack;
    }

    /** Ctrl-C, Z, \, S, Q, V and O are keys like others. */
    private void makeAllKeysOrdinary() throws IOException {
        runSTTYCommand("-icanon", "-echo", "-isig", "-ixon", "-iexten", "min", "1");
    }

    /** Marks around pasted text on; the keypad and the arrows send what is printed on them; the mouse says where it is pressed. */
    private void setKeyModes() throws IOException {
        send("\033[?2004h\033[?1l\033>" + (takesMouse ? "\033[?1000h\033[?1006h" : ""));
        flush();
    }

    @Override
    public void enterPrivateMode() throws IOException {
        synchronized (this) {
            givenBack = false;
        }
        super.enterPrivateMode();
        setKeyModes();
    }

    @Override
    public synchronized void exitPrivateMode() throws IOException {
        send("\033[?2004l" + (takesMouse ? "\033[?1006l\033[?1000l" : ""));
        super.exitPrivateMode();
        givenBack = true;
    }

    @Override
    protected synchronized void writeToTerminal(byte... bytes) throws IOException {
        if (!givenBack) super.writeToTerminal(bytes);
    }

    /** Of the five calls that the superclass makes, only that which reads the settings is needed. */
    @Override
    protected String runSTTYCommand(String... parameters) throws IOException {
        boolean whileBeingMade = !ready && !"-g".equals(parameters[0]);
        boolean interruptKeyOnly = ready && parameters.length == 2 && "intr".equals(parameters[0]);
        return whileBeingMade || interruptKeyOnly ? "" : super.runSTTYCommand(parameters);
    }

    @Override
    protected TerminalSize findTerminalSize() throws IOException {
        String[] rowsAndColumns = runSTTYCommand("size").trim().split(" +");
        if (rowsAndColumns.length == 2 && isCount(rowsAndColumns[0]) && isCount(rowsAndColumns[1])) {
            return new TerminalSize(Integer.parseInt(rowsAndColumns[1]), Integer.parseInt(rowsAndColumns[0]));
        }
        return new TerminalSize(80, 24);
    }

    /** Runs while the superclass is being made: uses no field. */
    @Override
    protected KeyDecodingProfile getDefaultKeyDecodingProfile() {
        return new BoardKeys();
    }

    /** The inherited one sends zero bytes for some characters. */
    @Override
    public void putString(String text) throws IOException {
        writeToTerminal(text.getBytes(StandardCharsets.UTF_8));
    }

    private void send(String sequence) throws IOException {
        writeToTerminal(sequence.getBytes(StandardCharsets.US_ASCII));
    }

    private static boolean isCount(String text) {
        return text.matches("[1-9][0-9]{0,4}");
    }
}
