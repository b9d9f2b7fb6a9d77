package org.shedboard.board;

import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.FixOffer;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** How a fix that was found comes to its work: what it takes is worked out, then the owner is asked. */
final class Fixes {
    private Fixes() {}

    /** Whatever a tick asks for besides: of a fix, what it takes to put it right. */
    static Turn offered(Board board, Act.Tick tick) {
        Optional<Visit> visit = board.expectDay().findVisit(tick.visitId());
        boolean isToAsk = tick.mark() == Mark.FIX
                && visit.stream()
                        .flatMap(found -> FixOffer.toAsk(board.expectDay(), found).stream())
                        .anyMatch(point -> point.id().equals(tick.pointId()));
        return isToAsk ? Turn.to(board, new Effect.AskFix(tick.visitId(), tick.pointId())) : Turn.to(board);
    }

    static Optional<Point> pointOf(Day day, Act.Tick tick) {
        return day.findVisit(tick.visitId())
                .flatMap(visit -> day.books()
                        .catalogue()
                        .expectClass(day.machineOf(visit).classId())
                        .findPoint(tick.pointId()));
    }

    /** The fixes of a visit of which there is something to ask: not those that the owner said yes to. */
    static List<Point> open(Day day, Visit visit) {
        return FixOffer.open(day, visit);
    }

    static Turn ask(Board board, Visit visit) {
        List<Point> points = open(board.expectDay(), visit);
        return points.size() == 1
                ? Turn.to(board, new Effect.AskFix(visit.id(), points.get(0).id()))
                : Turn.to(board.asking(new InspectAsks(board.expectDay()).whichFix(visit, points)));
    }

    /** An offer comes up where nobody is being asked something else; on other screens it waits among what needs the foreman. */
    static Board answered(Board board, FixOffer.Answer answer) {
        boolean isWelcome = board.screen() instanceof Screen.Next
                || board.screen() instanceof Screen.Sheet
                || board.screen() instanceof Screen.Ring;
        if (!isWelcome || board.overlay().isPresent()) {
            return board;
        }
        if (answer instanceof FixOffer.Answer.NotGiven not) {
            return board.noting(
                    Note.refused(Words.say(not.refusal().name(), not.refusal().values())));
        }
        FixOffer offer = ((FixOffer.Answer.Given) answer).offer();
        String by = board.screen() instanceof Screen.Next next ? next.personId() : board.who();
        return board.expectDay().findVisit(offer.visitId()).isEmpty()
                ? board
                : board.asking(new InspectAsks(board.expectDay()).ownersWord(offer, by));
    }
}
