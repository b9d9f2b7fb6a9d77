package org.shedboard.board;

import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.forecast.Suggestion;
import org.shedboard.words.Words;

/** What keys do on the list of figures that finished work contradicts. */
final class SuggestKeys {
    private final Board board;
    private final Screen.Suggested screen;

    SuggestKeys(Board board, Screen.Suggested screen) {
        this.board = board;
        this.screen = screen;
    }

    /** The list as it is by what is known now. */
    static Screen.Suggested of(Board board, int row) {
        return new Screen.Suggested(board.expectDay().books().suggestions(), 0).to(row);
    }

    /** It is asked whether to, since every estimate of such work changes with it. */
    Turn accept() {
        Suggestion chosen = screen.chosen().orElseThrow();
        String name = FigureWords.name(board.expectDay().books().catalogue(), chosen.figure());
        return Turn.to(board.asking(new ChoiceList()
                .ask(Words.say("ask.figure_yes", chosen.proposed()), whoAccepts(chosen))
                .add(Words.say("ask.figure_no", chosen.now()), Optional.empty(), new Overlay.Reply.Show(screen))
                .titled(Words.say("ask.figure", name, chosen.now(), chosen.proposed()), 1)));
    }

    private Overlay whoAccepts(Suggestion chosen) {
        return new Signatures(board)
                .whoAnswers(person ->
                        new Act.AcceptFigure(chosen.figure().id(), chosen.now(), chosen.proposed(), person.id()));
    }
}
