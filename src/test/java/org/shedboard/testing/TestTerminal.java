package org.shedboard.testing;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/** A terminal in memory, which can be read while it is drawn on: the library's own holds its lock while it waits. */
public final class TestTerminal extends DefaultVirtualTerminal {
    private final BlockingQueue<KeyStroke> keys = new LinkedBlockingQueue<>();

    public TestTerminal(int columns, int rows) {
        super(new TerminalSize(columns, rows));
    }

    /** Types the characters one after the other. */
    public void type(String text) {
        for (char character : text.toCharArray()) addInput(new KeyStroke(character, false, false));
    }

    /** Presses a key that is no character. */
    public void press(KeyType key) {
        addInput(new KeyStroke(key));
    }

    /** Makes the window another size. */
    public void resize(int columns, int rows) {
        setTerminalSize(new TerminalSize(columns, rows));
    }

    @Override
    public void addInput(KeyStroke key) {
        keys.add(key);
    }

    @Override
    public KeyStroke pollInput() {
        return keys.poll();
    }

    @Override
    public KeyStroke readInput() {
        try {
            return keys.take();
        } catch (InterruptedException interrupt) {
            Thread.currentThread().interrupt();
            return new KeyStroke(KeyType.EOF);
        }
    }

    /** What a row of the window shows, without blanks at the end. */
    public synchronized String row(int row) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < getTerminalSize().getColumns(); column++) {
            TextCharacter cell = getCharacter(column, row);
            line.append(cell.getCharacterString());
            if (cell.isDoubleWidth()) column++;
        }
        return line.toString().stripTrailing();
    }
}
