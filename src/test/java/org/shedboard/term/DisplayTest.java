package org.shedboard.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.shedboard.board.Key;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;
import org.shedboard.look.Scheme;
import org.shedboard.testing.TestTerminal;

@Timeout(20)
class DisplayTest {
    private final TestTerminal terminal = new TestTerminal(20, 4);
    private final BlockingQueue<Event> events = new LinkedBlockingQueue<>();
    private Display display;

    @BeforeEach
    void open() throws IOException {
        display = new Display(terminal, Palette.fixed(Scheme.DARK));
    }

    @AfterEach
    void close() throws IOException {
        display.close();
        terminal.press(KeyType.EOF);
    }

    @Test
    void a_grid_is_painted_with_its_glyphs_and_colours() throws IOException {
        display.show(drawn(new Size(20, 4), "Hoist 1 due 10:40", Style.LATE));
        assertEquals("Hoist 1 due 10:40", terminal.row(0));
        assertEquals(new TextColor.Indexed(215), terminal.getCharacter(0, 0).getForegroundColor());
        assertEquals(new TextColor.Indexed(234), terminal.getCharacter(0, 0).getBackgroundColor());
        assertTrue(terminal.getCharacter(0, 0).isBold());
        assertEquals(new TextColor.Indexed(234), terminal.getCharacter(19, 3).getBackgroundColor());
    }

    @Test
    void only_what_changed_is_painted_again() throws IOException {
        display.show(drawn(new Size(20, 4), "due 10:40", Style.NORMAL));
        terminal.getAndResetDirtyCells();
        terminal.isWholeBufferDirtyThenReset();
        display.show(drawn(new Size(20, 4), "due 10:50", Style.NORMAL));
        assertEquals("due 10:50", terminal.row(0));
        assertEquals(1, terminal.getAndResetDirtyCells().size());
        assertFalse(terminal.isWholeBufferDirtyThenReset(), "the screen was wiped");
    }

    @Test
    void everything_is_painted_again_when_asked() throws IOException {
        Grid grid = drawn(new Size(20, 4), "due 10:40", Style.NORMAL);
        display.show(grid);
        terminal.setCursorPosition(0, 0);
        terminal.putString("noise");
        display.show(grid);
        assertEquals("noise0:40", terminal.row(0), "nothing changed, as far as we know");
        display.repaint();
        display.show(grid);
        assertEquals("due 10:40", terminal.row(0));
    }

    @Test
    void wide_characters_take_two_columns_and_leave_nothing_behind() throws IOException {
        display.show(drawn(new Size(20, 4), "日本語 x", Style.NORMAL));
        assertEquals("日本語 x", terminal.row(0));
        assertEquals("x", terminal.getCharacter(7, 0).getCharacterString());
        display.show(drawn(new Size(20, 4), "a日本語x", Style.NORMAL));
        assertEquals("a日本語x", terminal.row(0));
        display.show(drawn(new Size(20, 4), "abc", Style.NORMAL));
        assertEquals("abc", terminal.row(0));
    }

    @Test
    void a_grid_of_another_size_is_cut_or_filled_up() throws IOException {
        display.show(drawn(new Size(50, 9), "a".repeat(19) + "日本", Style.NORMAL));
        assertEquals("a".repeat(19), terminal.row(0), "no half of a wide character at the edge");
        display.show(drawn(new Size(3, 1), "abc", Style.NORMAL));
        assertEquals("abc", terminal.row(0));
        display.show(drawn(new Size(0, 0), "", Style.NORMAL));
        assertEquals("", terminal.row(0));
    }

    @Test
    void a_new_window_size_is_told_and_painted_whole() throws Exception {
        display.show(drawn(new Size(20, 4), "small", Style.NORMAL));
        display.listen(events::add);
        terminal.resize(30, 6);
        assertEquals(new Event.Resized(new Size(30, 6)), next());
        assertEquals(new Size(30, 6), display.size());
        terminal.isWholeBufferDirtyThenReset();
        display.show(drawn(new Size(30, 6), "wide enough for all of this", Style.NORMAL));
        assertEquals("wide enough for all of this", terminal.row(0));
        assertTrue(terminal.isWholeBufferDirtyThenReset());
        terminal.resize(10, 2);
        assertEquals(new Event.Resized(new Size(10, 2)), next());
        display.show(drawn(new Size(10, 2), "little", Style.NORMAL));
        assertEquals("little", terminal.row(0));
        assertEquals(new Size(10, 2), display.size());
    }

    @Test
    void keys_are_told_in_the_order_in_which_they_are_pressed() throws Exception {
        display.listen(events::add);
        terminal.type("t7");
        terminal.press(KeyType.ArrowDown);
        terminal.addInput(new KeyStroke('l', true, false));
        terminal.press(KeyType.F5);
        assertEquals(new Event.Pressed(Key.of('t')), next());
        assertEquals(new Event.Pressed(Key.of('7')), next());
        assertEquals(new Event.Pressed(Key.DOWN), next());
        assertEquals(new Event.Pressed(Key.control('l')), next());
        assertEquals(new Event.Pressed(Key.OTHER), next());
    }

    @Test
    void a_closed_window_is_told_once() throws Exception {
        display.listen(events::add);
        terminal.press(KeyType.EOF);
        assertEquals(new Event.Gone(), next());
    }

    @Test
    void closing_twice_is_closing_once_and_nothing_is_shown_after() throws IOException {
        display.show(drawn(new Size(20, 4), "board", Style.NORMAL));
        display.close();
        display.close();
        display.show(drawn(new Size(20, 4), "more", Style.NORMAL));
        assertEquals("", terminal.row(0), "the window shows again what it showed before");
    }

    @Test
    void a_full_screen_needs_a_terminal_that_can_show_one() {
        assertTrue(Display.isUsable(Map.of("TERM", "xterm"), true));
        assertFalse(Display.isUsable(Map.of("TERM", "xterm"), false));
        assertFalse(Display.isUsable(Map.of("TERM", "dumb"), true));
        assertFalse(Display.isUsable(Map.of("TERM", ""), true));
        assertFalse(Display.isUsable(Map.of(), true));
    }

    private Event next() throws InterruptedException {
        Event event = events.poll(10, TimeUnit.SECONDS);
        return event == null ? new Event.Continued() : event;
    }

    private static Grid drawn(Size size, String text, Style style) {
        Canvas canvas = Canvas.of(size);
        canvas.text(canvas.region(), text, style);
        return canvas.grid();
    }
}
