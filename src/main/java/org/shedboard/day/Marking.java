package org.shedboard.day;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Person;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Visit;

/** Whether a point may be marked like this. */
final class Marking {
    private final Day day;
    private final Visit visit;
    private final Act.Tick act;
    private final Point point;

    private Marking(Day day, Visit visit, Act.Tick act, Point point) {
        this.day = day;
        this.visit = visit;
        this.act = act;
        this.point = point;
    }

    /** @param point the one the act is about */
    static Optional<Refusal> refusal(Day day, Visit visit, Act.Tick act, Point point) {
        Marking marking = new Marking(day, visit, act, point);
        return marking.whyMissing().or(marking::outsideLimits).or(marking::fixStands);
    }

    static Finding findingOf(Act.Tick act, Instant now) {
        return new Finding(act.pointId(), act.mark(), act.measured(), act.note(), act.personId(), now);
    }

    private Optional<Refusal> whyMissing() {
        return act.mark() == Mark.NOT_REACHED && act.note().isBlank()
                ? Optional.of(Refusal.of("why_not_reached", point.name()))
                : Optional.empty();
    }

    private Optional<Refusal> outsideLimits() {
        boolean isWrong = act.mark() == Mark.GOOD
                && act.measured().isPresent()
                && !point.mayBeGood(act.measured().getAsDouble());
        return isWrong
                ? point.measure()
                        .map(measure -> Refusal.of(
                                "outside_limits",
                                point.name(),
                                Figures.say(act.measured().getAsDouble()),
                                Figures.say(measure.low()),
                                Figures.say(measure.high()),
                                measure.unit()))
                : Optional.empty();
    }

    /**
     * A fix that stops riding is not ticked away by a slip of a key: only who may sign off says that it is mended. That it was not
     * reached mends nothing, and would take the fix found in this visit out of sight.
     */
    private Optional<Refusal> fixStands() {
        Person person = day.shop().expectPerson(act.personId());
        boolean isFoundNow = visit.findingAt(point.id()).filter(Finding::isFix).isPresent();
        boolean isFoundBefore = LastTime.fixStandsAt(day, visit, point);
        boolean takesAway = isFoundNow && act.mark() != Mark.FIX
                || isFoundBefore && (act.mark() == Mark.GOOD || act.mark() == Mark.WATCH);
        boolean mayNot = !person.may(Skill.SIGN_OFF) || act.mark() == Mark.NOT_REACHED;
        return point.stopsRiding() && takesAway && mayNot
                ? Optional.of(Refusal.of("fix_stands", point.name()))
                : Optional.empty();
    }
}
