package org.shedboard.board;

/**
 * A line of text being typed.
 *
 * @param cursor how many characters stand before the cursor
 */
public record Typing(String text, int cursor) {
    /** Longer than anything a form asks for; what is typed or pasted beyond it is dropped. */
    private static final int MOST = 200;

    public static final Typing EMPTY = new Typing("", 0);

    public static Typing of(String text) {
        return new Typing(text, text.length());
    }

    /** What a key makes of it; keys that are not for typing leave it as it is. */
    public Typing with(Key key) {
        return switch (key.kind()) {
            case CHARACTER -> plus(key.character());
            case BACKSPACE -> cursor == 0 ? this : without(cursor - 1, cursor - 1);
            case DELETE -> cursor == text.length() ? this : without(cursor, cursor);
            case LEFT -> new Typing(text, Math.max(0, cursor - 1));
            case RIGHT -> new Typing(text, Math.min(text.length(), cursor + 1));
            case HOME -> new Typing(text, 0);
            case END -> new Typing(text, text.length());
            case CONTROL -> key.isControl('u') ? EMPTY : this;
            default -> this;
        };
    }

    private Typing plus(char character) {
        if (Character.isISOControl(character) || text.length() >= MOST) {
            return this;
        }
        return new Typing(text.substring(0, cursor) + character + text.substring(cursor), cursor + 1);
    }

    private Typing without(int index, int next) {
        return new Typing(text.substring(0, index) + text.substring(index + 1), next);
    }

    /** The same with a star for each character. */
    public Typing hidden() {
        return new Typing("*".repeat(text.length()), cursor);
    }

    public boolean isBlank() {
        return text.isBlank();
    }
}
