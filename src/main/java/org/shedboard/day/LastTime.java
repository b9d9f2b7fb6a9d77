package org.shedboard.day;

import java.util.List;
import java.util.Optional;
import org.shedboard.estimate.Point;
import org.shedboard.register.Carried;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Visit;

/** What was left at a machine's points when it last went home, as far as nothing newer is known of it in this visit. */
public final class LastTime {
    private LastTime() {}

    /** All that is to be looked at again in a visit; none of a visit that is over, which took home what it found itself. */
    public static List<Carried> of(Day day, Visit visit) {
        return day.books().register().carriedBy(visit.machineId()).stream()
                .filter(each -> !each.visitId().equals(visit.id()))
                .toList();
    }

    public static Optional<Carried> at(Day day, Visit visit, String pointId) {
        return of(day, visit).stream()
                .filter(each -> each.finding().pointId().equals(pointId))
                .findFirst();
    }

    /** Ids of the points to look at again whatever the depth: those that the machine's class still has. */
    static List<String> pointsOf(Day day, String machineId) {
        String classId = day.books().expectMachine(machineId).classId();
        return day.books().register().carriedBy(machineId).stream()
                .map(each -> each.finding().pointId())
                .filter(id -> day.books()
                        .catalogue()
                        .expectClass(classId)
                        .findPoint(id)
                        .isPresent())
                .toList();
    }

    /** A point that was left, with what was read off there, by whom and when. */
    static String say(Day day, Point point, Carried carried) {
        Finding finding = carried.finding();
        String unit = point.measure().map(Point.Measure::unit).orElse("");
        String value = finding.measured().isPresent()
                ? " " + Figures.say(finding.measured().getAsDouble()) + " " + unit
                : "";
        return "%s%s (%s, %s)"
                .formatted(point.name(), value, day.nameOf(finding.by()), Clocks.sayDate(day, finding.at()));
    }

    /** Whether a fix of last time still stands here: a point that was not reached again is as it was. */
    static boolean fixStandsAt(Day day, Visit visit, Point point) {
        boolean isLookedAt = visit.findingAt(point.id())
                .filter(finding -> finding.mark() != Mark.NOT_REACHED)
                .isPresent();
        return !isLookedAt
                && visit.state().isHere()
                && at(day, visit, point.id())
                        .filter(each -> each.finding().isFix())
                        .isPresent();
    }
}
