package org.shedboard.board;

import java.util.List;
import java.util.Locale;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Figure;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Work;
import org.shedboard.forecast.Suggestion;
import org.shedboard.learn.Doubt;
import org.shedboard.words.Words;

/** Figures of the catalogue and what speaks against them, said: on the screen and by the command alike. */
public final class FigureWords {
    private FigureWords() {}

    /** What a figure is of; its id where the catalogue no longer has it. */
    public static String name(Catalogue catalogue, String figureId) {
        return Figure.find(catalogue, figureId)
                .map(figure -> name(catalogue, figure))
                .orElse(figureId);
    }

    public static String name(Catalogue catalogue, Figure figure) {
        if (figure instanceof Figure.Wash wash) {
            return Words.say("figure.wash", className(catalogue, wash.classId()), Words.say(wash.mud()));
        }
        if (figure instanceof Figure.Inspection look) {
            String step = Words.say(look.step()).toLowerCase(Locale.ROOT);
            return Words.say("figure.inspection", className(catalogue, look.classId()), step);
        }
        if (figure instanceof Figure.OfTask task) {
            return Words.say(
                    "figure.task",
                    catalogue.findWork(task.workId()).map(Work::name).orElse(task.workId()),
                    catalogue
                            .findWork(task.workId())
                            .flatMap(work -> work.findTask(task.taskId()))
                            .map(Work.WorkTask::name)
                            .orElse(task.taskId()));
        }
        throw new IllegalArgumentException("nothing is called " + figure);
    }

    private static String className(Catalogue catalogue, String classId) {
        return catalogue.findClass(classId).map(MachineClass::name).orElse(classId);
    }

    /** How many there are; a sentence of its own where there are none. */
    public static String total(List<Suggestion> list) {
        if (list.isEmpty()) {
            return Words.say("suggest.none");
        }
        return list.size() == 1 ? Words.say("suggest.total.one") : Words.say("suggest.total.more", list.size());
    }

    public static String times(double factor) {
        return String.format(Locale.ROOT, "%.2f", factor);
    }

    /** From where to where its factor may lie. */
    public static String range(Doubt evidence) {
        return Words.say("suggest.range", times(evidence.low()), times(evidence.high()));
    }

    /** What speaks against a figure, in sentences. */
    public static String evidence(Suggestion suggestion) {
        Doubt evidence = suggestion.evidence();
        return Words.say(
                "suggest.evidence",
                evidence.stays(),
                times(evidence.median()),
                times(evidence.factor()),
                times(evidence.low()),
                times(evidence.high()));
    }
}
