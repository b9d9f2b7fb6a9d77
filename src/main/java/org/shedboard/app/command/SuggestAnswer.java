package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shedboard.board.FigureWords;
import org.shedboard.estimate.Catalogue;
import org.shedboard.forecast.Suggestion;
import org.shedboard.words.Words;

/** The figures that finished work contradicts, a line a figure. */
final class SuggestAnswer {
    private final Catalogue catalogue;

    private SuggestAnswer(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    static Answer of(Catalogue catalogue, List<Suggestion> list) {
        SuggestAnswer answer = new SuggestAnswer(catalogue);
        return new Answer(answer.lines(list), answer.tree(list));
    }

    private List<String> lines(List<Suggestion> list) {
        List<String> lines = new ArrayList<>(List.of(FigureWords.total(list)));
        if (!list.isEmpty()) {
            Table table = new Table("llrrrrrl");
            table.row(
                    Words.say("suggest.column_id"),
                    Words.say("suggest.figure"),
                    Words.say("suggest.now"),
                    Words.say("suggest.proposed"),
                    Words.say("suggest.stays"),
                    Words.say("suggest.median"),
                    Words.say("suggest.times"),
                    Words.say("suggest.between"));
            list.forEach(each -> row(table, each));
            lines.addAll(table.lines());
            lines.add(Words.say("suggest.how"));
        }
        return lines;
    }

    private void row(Table table, Suggestion each) {
        table.row(
                each.figure().id(),
                FigureWords.name(catalogue, each.figure()),
                String.valueOf(each.now()),
                String.valueOf(each.proposed()),
                String.valueOf(each.evidence().stays()),
                FigureWords.times(each.evidence().median()),
                FigureWords.times(each.evidence().factor()),
                FigureWords.range(each.evidence()));
    }

    private Map<String, Object> tree(List<Suggestion> list) {
        return new Tree()
                .put("suggestions", list.stream().map(this::tree).toList())
                .fields();
    }

    private Map<String, Object> tree(Suggestion each) {
        return new Tree()
                .put("id", each.figure().id())
                .put("figure", FigureWords.name(catalogue, each.figure()))
                .put("now", each.now())
                .put("proposed", each.proposed())
                .put("stays", each.evidence().stays())
                .put("median", each.evidence().median())
                .put("factor", each.evidence().factor())
                .put("low", each.evidence().low())
                .put("high", each.evidence().high())
                .fields();
    }
}
