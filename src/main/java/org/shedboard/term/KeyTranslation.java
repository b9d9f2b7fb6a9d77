package org.shedboard.term;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import org.shedboard.board.Key;

/** The library's keys in the words of the screens. */
final class KeyTranslation {
    private KeyTranslation() {}

    static Event toEvent(KeyStroke stroke) {
        return stroke instanceof BoardKeys.Touch touch
                ? new Event.Pointed(touch.column, touch.row)
                : new Event.Pressed(toKey(stroke));
    }

    /** Modifiers of keys that are no letters are ignored: an arrow is an arrow. */
    static Key toKey(KeyStroke stroke) {
        if (stroke instanceof BoardKeys.PasteMark mark) return mark.isStart ? Key.PASTE_START : Key.PASTE_END;
        if (stroke.getKeyType() == KeyType.Character) return ofCharacter(stroke);
        return switch (stroke.getKeyType()) {
            case Enter -> Key.ENTER;
            case Escape -> Key.ESCAPE;
            case Backspace -> Key.BACKSPACE;
            case Delete -> Key.DELETE;
            case Tab -> Key.TAB;
            case ReverseTab -> Key.BACK_TAB;
            case ArrowUp -> Key.UP;
            case ArrowDown -> Key.DOWN;
            case ArrowLeft -> Key.LEFT;
            case ArrowRight -> Key.RIGHT;
            case Home -> Key.HOME;
            case End -> Key.END;
            case PageUp -> Key.PAGE_UP;
            case PageDown -> Key.PAGE_DOWN;
            case Insert -> Key.INSERT;
            default -> Key.OTHER;
        };
    }

    private static Key ofCharacter(KeyStroke stroke) {
        char character = stroke.getCharacter();
        if (stroke.isAltDown()) return Key.OTHER;
        if (stroke.isCtrlDown()) return isLetter(character) ? Key.control(character) : Key.OTHER;
        return Character.isISOControl(character) ? Key.OTHER : Key.of(character);
    }

    private static boolean isLetter(char character) {
        return character >= 'a' && character <= 'z' || character >= 'A' && character <= 'Z';
    }
}
