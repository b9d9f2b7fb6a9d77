package org.shedboard.board;

import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What is said of an act that was carried out: on the screen and by the commands alike. */
public final class DoneWords {
    private DoneWords() {}

    /** @param day the day with the act in it */
    public static String of(Day day, Act act, Optional<String> visitId) {
        if (act instanceof Act.ReadMeter read) {
            return Words.say("done.ReadMeter", nameOf(day, read.machineId()));
        }
        if (act instanceof Act.NoteRung rung) {
            return Words.say("done.NoteRung", nameOf(day, rung.machineId()));
        }
        if (act instanceof Act.AcceptFigure accept) {
            String figure = FigureWords.name(day.books().catalogue(), accept.figureId());
            return Words.say("done.AcceptFigure", figure, accept.minutes(), accept.was());
        }
        if (act instanceof Act.SetPackedPercent set) {
            return Words.say("done.SetPackedPercent", set.percent());
        }
        Optional<Visit> visit = visitId.flatMap(day::findVisit);
        String name = visit.map(found -> Names.of(day, found)).orElse("");
        String sentence = "done." + act.getClass().getSimpleName();
        if (visit.isPresent() && act instanceof Act.Tick tick) {
            return Words.say(sentence, name, pointOf(day, visit.get(), tick.pointId()), Words.say(tick.mark()));
        }
        if (visit.isPresent() && act instanceof Act.OwnerSaid said) {
            return Words.say(sentence, name, pointOf(day, visit.get(), said.pointId()));
        }
        String task = visit.flatMap(found -> taskOf(found, act)).orElse("");
        return Words.say(sentence, name, task).strip();
    }

    private static String nameOf(Day day, String machineId) {
        return day.books()
                .findMachine(machineId)
                .map(machine -> Names.of(day.books(), machine))
                .orElse(machineId);
    }

    private static Optional<String> taskOf(Visit visit, Act act) {
        String id = "";
        if (act instanceof Act.Start start) {
            id = start.taskId();
        } else if (act instanceof Act.Finish finish) {
            id = finish.taskId();
        } else if (act instanceof Act.Pause pause) {
            id = pause.taskId();
        } else if (act instanceof Act.HandOver over) {
            id = over.taskId();
        } else if (act instanceof Act.PinTask pin) {
            id = pin.taskId();
        } else if (act instanceof Act.LiftPin lift) {
            id = lift.taskId();
        }
        return visit.findTask(id).map(Task::name);
    }

    private static String pointOf(Day day, Visit visit, String pointId) {
        return day.books()
                .catalogue()
                .expectClass(day.machineOf(visit).classId())
                .findPoint(pointId)
                .map(Point::name)
                .orElse(pointId);
    }
}
