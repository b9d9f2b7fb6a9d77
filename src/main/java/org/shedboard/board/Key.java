package org.shedboard.board;

/** One press of a key, as the screens know it; the character is a blank where the kind says it all. */
public record Key(Kind kind, char character) {
    /** What kind of key it is. */
    public enum Kind {
        /** Something to type; one character may be half of a pair. */
        CHARACTER,
        ENTER,
        ESCAPE,
        BACKSPACE,
        DELETE,
        TAB,
        BACK_TAB,
        UP,
        DOWN,
        LEFT,
        RIGHT,
        HOME,
        END,
        PAGE_UP,
        PAGE_DOWN,
        INSERT,
        /** What comes until {@link #PASTE_END} was not typed, Enter included. */
        PASTE_START,
        PASTE_END,
        /** A letter pressed together with the control key; the character is the small letter. */
        CONTROL,
        /** A key that we do not know; it does nothing. */
        OTHER
    }

    public static final Key ENTER = of(Kind.ENTER);
    public static final Key ESCAPE = of(Kind.ESCAPE);
    public static final Key BACKSPACE = of(Kind.BACKSPACE);
    public static final Key DELETE = of(Kind.DELETE);
    public static final Key TAB = of(Kind.TAB);
    public static final Key BACK_TAB = of(Kind.BACK_TAB);
    public static final Key UP = of(Kind.UP);
    public static final Key DOWN = of(Kind.DOWN);
    public static final Key LEFT = of(Kind.LEFT);
    public static final Key RIGHT = of(Kind.RIGHT);
    public static final Key HOME = of(Kind.HOME);
    public static final Key END = of(Kind.END);
    public static final Key PAGE_UP = of(Kind.PAGE_UP);
    public static final Key PAGE_DOWN = of(Kind.PAGE_DOWN);
    public static final Key INSERT = of(Kind.INSERT);
    public static final Key PASTE_START = of(Kind.PASTE_START);
    public static final Key PASTE_END = of(Kind.PASTE_END);
    public static final Key OTHER = of(Kind.OTHER);

    /** A typed character. */
    public static Key of(char character) {
        return new Key(Kind.CHARACTER, character);
    }

    /** A letter pressed together with the control key. */
    public static Key control(char letter) {
        return new Key(Kind.CONTROL, Character.toLowerCase(letter));
    }

    public boolean isCharacter() {
        return kind == Kind.CHARACTER;
    }

    /** Whether it is just this character, typed. */
    public boolean is(char expected) {
        return isCharacter() && character == expected;
    }

    /** Whether it is this letter with the control key. */
    public boolean isControl(char letter) {
        return kind == Kind.CONTROL && character == letter;
    }

    private static Key of(Kind kind) {
        return new Key(kind, ' ');
    }
}
