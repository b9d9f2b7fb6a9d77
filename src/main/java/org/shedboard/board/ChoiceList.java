package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Overlay.Choice;
import org.shedboard.board.Overlay.Reply;
import org.shedboard.day.Act;

/** Answers to a question being put together; each gets the next key, the digits first and then the letters. */
final class ChoiceList {
    private static final String KEYS = "123456789abcdefghijklmnopqrstuvwxyz";

    private final List<Choice> choices = new ArrayList<>();

    /** An answer that leads to another question. */
    ChoiceList ask(String label, Overlay next) {
        return add(label, Optional.empty(), new Reply.Ask(next));
    }

    /** An answer that is an act. */
    ChoiceList carry(String label, Act act) {
        return add(label, Optional.empty(), new Reply.Carry(act));
    }

    /** @param off why it cannot be given, as a sentence */
    ChoiceList add(String label, Optional<String> off, Reply reply) {
        if (choices.size() < KEYS.length()) {
            choices.add(new Choice(KEYS.charAt(choices.size()), label, off, reply));
        }
        return this;
    }

    Overlay titled(String title) {
        return titled(title, 0);
    }

    /** @param selected index of the answer that Enter gives */
    Overlay titled(String title, int selected) {
        return new Overlay.Choose(title, choices, selected);
    }
}
