package org.shedboard.screen;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.shedboard.board.Binding;
import org.shedboard.board.Board;
import org.shedboard.board.Key;
import org.shedboard.board.Keys;
import org.shedboard.board.Msg;
import org.shedboard.board.Overlay;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.grid.Spot;

/** Somebody at a terminal who presses, points, pastes and pulls at the window's corner, with and without sense. */
final class RandomHands {
    private static final List<Key> WITHOUT_LETTER = List.of(
            Key.ENTER,
            Key.ENTER,
            Key.ENTER,
            Key.ESCAPE,
            Key.BACKSPACE,
            Key.DELETE,
            Key.TAB,
            Key.BACK_TAB,
            Key.UP,
            Key.DOWN,
            Key.DOWN,
            Key.DOWN,
            Key.LEFT,
            Key.RIGHT,
            Key.HOME,
            Key.END,
            Key.PAGE_UP,
            Key.PAGE_DOWN,
            Key.INSERT,
            Key.PASTE_END,
            Key.OTHER,
            Key.control('u'),
            Key.control('s'),
            Key.control('l'));

    private static final List<Size> USUAL = List.of(
            new Size(80, 24),
            new Size(80, 24),
            new Size(100, 30),
            new Size(120, 36),
            new Size(200, 60),
            new Size(220, 70));

    private static final List<String> PASTED = List.of(
            "+45",
            "14:30",
            "fri 12",
            "0",
            "7\n8\n9",
            "重機重機重機重機重機重機重機",
            "\u202e\u001b[2J",
            "e\u0301".repeat(40),
            "1".repeat(300));

    private final Random random;
    private long pressed = 1_000;
    private Size size = new Size(80, 24);

    RandomHands(Random random) {
        this.random = random;
    }

    Size size() {
        return size;
    }

    /** One more thing is done; the shop's clock goes on now and then. */
    String act(Rehearsal rehearsal, Grid painted) {
        int kind = random.nextInt(200);
        if (kind < 3) {
            size = random.nextInt(3) == 0 ? new Size(1 + random.nextInt(220), 1 + random.nextInt(70)) : any(USUAL);
            return "sized " + size;
        }
        if (kind < 9) {
            int minutes = minutes();
            rehearsal.later(minutes);
            return "later " + minutes;
        }
        if (kind < 11) {
            return paste(rehearsal);
        }
        if (kind < 12) {
            pressed += 61_000;
            rehearsal.told(new Msg.TimeWent(Instant.EPOCH.plusMillis(pressed)));
            return "a minute without a key";
        }
        if (kind < 45) {
            return point(rehearsal, painted);
        }
        Key key = key(rehearsal.board());
        press(rehearsal, key);
        return key.toString();
    }

    private int minutes() {
        return switch (random.nextInt(12)) {
            case 0 -> random.nextInt(900);
            case 1, 2 -> random.nextInt(120);
            default -> random.nextInt(7);
        };
    }

    private String paste(Rehearsal rehearsal) {
        String text = any(PASTED);
        press(rehearsal, Key.PASTE_START);
        text.chars().forEach(character -> press(rehearsal, Key.of((char) character)));
        if (random.nextInt(10) > 0) {
            press(rehearsal, Key.PASTE_END);
        }
        return "pasted";
    }

    private String point(Rehearsal rehearsal, Grid painted) {
        int column = random.nextInt(Math.max(1, painted.size().columns()));
        int row = random.nextInt(Math.max(1, painted.size().rows()));
        if (!painted.size().region().contains(column, row)) {
            return "pointed beside";
        }
        Optional<Spot.Meaning> meaning = painted.meaningAt(column, row);
        pressed += 400;
        meaning.map(Press.class::cast)
                .ifPresent(press -> rehearsal.told(new Msg.Pointed(press.keys(), Instant.EPOCH.plusMillis(pressed))));
        return "pointed at " + column + "," + row + " " + meaning;
    }

    private void press(Rehearsal rehearsal, Key key) {
        pressed += random.nextInt(10) == 0 ? 100 : 400;
        rehearsal.told(new Msg.Pressed(key, Instant.EPOCH.plusMillis(pressed)));
    }

    /** Half of the keys are ones that mean something on the screen that is shown. */
    private Key key(Board board) {
        if (board.pasting()) {
            return Key.PASTE_END;
        }
        int kind = random.nextInt(10);
        List<Binding> bindings = Keys.of(board).stream().filter(Binding::isOn).toList();
        if (kind < 5 && board.overlay().isEmpty() && !bindings.isEmpty()) {
            return any(bindings).key();
        }
        if (kind < 6 || isTyped(board) && kind < 8) {
            return Key.of((char) ('0' + random.nextInt(10)));
        }
        if (kind == 6) {
            return Key.ENTER;
        }
        return kind == 7 ? Key.of((char) (' ' + random.nextInt(200))) : any(WITHOUT_LETTER);
    }

    private static boolean isTyped(Board board) {
        return board.overlay().filter(Overlay.TypeIn.class::isInstance).isPresent();
    }

    private <T> T any(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }
}
