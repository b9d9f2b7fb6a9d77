package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shedboard.board.DoneWords;
import org.shedboard.day.Act;
import org.shedboard.screen.YardEntry;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What is said of an act that was carried out. */
public final class Told {
    private Told() {}

    /**
     * @param before the day without the act
     * @param after the day with the act in it
     */
    public static Answer of(Act act, Optional<String> visitId, Seen before, Seen after) {
        Optional<Visit> visit = visitId.flatMap(after.day()::findVisit);
        String kind = act.getClass().getSimpleName();
        String sentence = DoneWords.of(after.day(), act, visitId);
        List<String> lines = new ArrayList<>(List.of(sentence));
        visit.filter(each -> each.state().isOpen())
                .map(each -> new YardEntry(after.outlook(), each))
                .filter(entry -> !entry.ready().isEmpty())
                .ifPresent(entry -> lines.add(outlookOf(entry)));
        List<String> notes = AtTheDoor.of(before, act);
        lines.addAll(notes);
        Tree tree = new Tree()
                .put("done", kebab(kind))
                .put("sentence", sentence)
                .put("visit", visit.map(each -> VisitTree.of(after.outlook(), each)))
                .put("notes", notes);
        return new Answer(lines, tree.fields());
    }

    private static String outlookOf(YardEntry entry) {
        return entry.promise().isEmpty()
                ? Words.say("command.ready", entry.ready())
                : Words.say("command.ready_promised", entry.ready(), entry.promise(), entry.chance());
    }

    private static String kebab(String name) {
        return name.replaceAll("(?<=[a-z])([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }
}
