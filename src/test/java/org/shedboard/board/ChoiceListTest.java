package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChoiceListTest {
    private static Overlay.Choose ask(int answers) {
        ChoiceList list = new ChoiceList();
        for (int i = 0; i < answers; i++) {
            list.add("answer " + i, Optional.empty(), new Overlay.Reply.Show(Screen.Places.START));
        }
        return (Overlay.Choose) list.titled("Which?", answers - 1);
    }

    /** What can be answered in the end, going on to what comes after. */
    private static List<String> reachable(Overlay.Choose question) {
        List<String> labels = new ArrayList<>();
        for (Overlay.Choice choice : question.choices()) {
            if (choice.reply() instanceof Overlay.Reply.Ask more) {
                labels.addAll(reachable((Overlay.Choose) more.next()));
            } else {
                labels.add(choice.label());
            }
        }
        return labels;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 34, 35, 36, 69, 70, 200})
    void every_answer_can_be_given_by_a_key_of_its_own(int answers) {
        Overlay.Choose question = ask(answers);
        List<String> reachable = reachable(question);
        assertEquals(answers, reachable.size());
        assertEquals(answers, new HashSet<>(reachable).size());
        assertEquals(
                question.choices().size(),
                question.choices().stream().map(Overlay.Choice::key).distinct().count());
    }

    @Test
    void a_question_without_answers_can_only_be_left() {
        Board asked = FakeShell.demonstration().board().asking(ask(0));
        Instant later = Instant.parse("2100-01-01T00:00:00Z");
        for (Key key : List.of(Key.ENTER, Key.DOWN, Key.UP)) {
            assertEquals(
                    asked.overlay(),
                    Update.of(asked, new Msg.Pressed(key, later)).board().overlay());
        }
        Board left = Update.of(asked, new Msg.Pressed(Key.ESCAPE, later)).board();
        assertEquals(Optional.empty(), left.overlay());
    }
}
