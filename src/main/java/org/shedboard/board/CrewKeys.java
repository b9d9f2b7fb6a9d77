package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.day.Day;
import org.shedboard.shop.Person;

/** The keys of the crew's screen. */
final class CrewKeys {
    private CrewKeys() {}

    static List<Binding> of(Board board) {
        Day day = board.expectDay();
        List<Binding> keys = new ArrayList<>();
        keys.add(Binding.when(Keys.isRunning(day), Key.ENTER, Deed.CREW_MEMBER, Keys.whyNotRunning(day)));
        keys.add(Binding.on('n', Deed.NEXT));
        keys.add(TakeBackKeys.binding(board));
        keys.addAll(SightKeys.of(board));
        keys.add(Binding.on(Key.UP, Deed.UP));
        keys.add(Binding.on(Key.DOWN, Deed.DOWN));
        keys.add(Binding.on('?', Deed.HELP));
        keys.add(Binding.on(Key.ESCAPE, Deed.BACK));
        keys.add(Binding.on(Key.TAB, Deed.BACK));
        keys.add(Binding.on(Key.BACK_TAB, Deed.YARD));
        return keys;
    }

    /** Whom the keys are about. */
    static Person chosen(Board board) {
        List<Person> people = board.expectDay().shop().people();
        int row = board.screen() instanceof Screen.Crew crew ? crew.row() : 0;
        return people.get(Math.min(row, people.size() - 1));
    }

    static Board moved(Board board, int row) {
        int last = board.expectDay().shop().people().size() - 1;
        return board.with(new Screen.Crew(Math.max(0, Math.min(last, row))));
    }
}
