package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Overlay.Choice;
import org.shedboard.board.Overlay.Reply;
import org.shedboard.day.Act;
import org.shedboard.words.Words;

/**
 * Answers to a question being put together; each gets the next key, the digits first and then the letters. Where there are more
 * answers than keys, the last one leads to the others.
 */
final class ChoiceList {
    private static final String KEYS = "123456789abcdefghijklmnopqrstuvwxyz";

    private final List<Answer> answers = new ArrayList<>();

    private record Answer(String label, Optional<String> off, Reply reply) {}

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
        answers.add(new Answer(label, off, reply));
        return this;
    }

    Overlay titled(String title) {
        return titled(title, 0);
    }

    /** @param selected index of the answer that Enter gives, if that is among the first */
    Overlay titled(String title, int selected) {
        List<Choice> choices = choices(title, answers);
        return new Overlay.Choose(title, choices, Math.min(selected, choices.size() - 1));
    }

    private static List<Choice> choices(String title, List<Answer> answers) {
        boolean isMore = answers.size() > KEYS.length();
        int count = isMore ? KEYS.length() - 1 : answers.size();
        List<Choice> choices = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Answer answer = answers.get(i);
            choices.add(new Choice(KEYS.charAt(i), answer.label(), answer.off(), answer.reply()));
        }
        if (isMore) {
            List<Answer> others = answers.subList(count, answers.size());
            Overlay next = new Overlay.Choose(title, choices(title, others), 0);
            choices.add(new Choice(
                    KEYS.charAt(count),
                    Words.say("ask.more_answers", others.size()),
                    Optional.empty(),
                    new Reply.Ask(next)));
        }
        return choices;
    }
}
