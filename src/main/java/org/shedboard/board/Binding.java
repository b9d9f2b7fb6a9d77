package org.shedboard.board;

import java.util.Optional;
import org.shedboard.words.Words;

/**
 * A key that does something on a screen.
 *
 * @param off why it cannot just now, as a sentence; empty when it can
 */
public record Binding(Key key, Deed deed, Optional<String> off) {
    static Binding on(Key key, Deed deed) {
        return new Binding(key, deed, Optional.empty());
    }

    static Binding on(char key, Deed deed) {
        return on(Key.of(key), deed);
    }

    static Binding when(boolean can, char key, Deed deed, String why) {
        return when(can, Key.of(key), deed, why);
    }

    static Binding when(boolean can, Key key, Deed deed, String why) {
        return new Binding(key, deed, can ? Optional.empty() : Optional.of(Words.say(why)));
    }

    /** The same at a terminal that only looks. */
    Binding toLookOnly() {
        return deed.isLook() ? this : new Binding(key, deed, Optional.of(Words.say("off.look_only")));
    }

    public boolean isOn() {
        return off.isEmpty();
    }

    /** Whether this press means this binding: a letter means the same in both cases. */
    boolean isMeantBy(Key pressed) {
        return key.kind() == pressed.kind()
                && Character.toLowerCase(key.character()) == Character.toLowerCase(pressed.character());
    }

    /** How the key is written on the screen. */
    public String label() {
        if (key.is(' ')) {
            return Words.say("key.SPACE");
        }
        return key.isCharacter() ? String.valueOf(key.character()) : Words.say("key." + key.kind());
    }

    public String name() {
        return Words.say(deed);
    }

    public String help() {
        return Words.say("deed." + deed.name() + ".help");
    }
}
