package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.Point;
import org.shedboard.register.Carried;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Visit;

/** What a machine takes home to be looked at again: what was watched, not reached, or found to need a fix that it did not get. */
public final class TakenHome {
    private final Day day;
    private final Visit visit;

    private TakenHome(Day day, Visit visit) {
        this.day = day;
        this.visit = visit;
    }

    /**
     * What was found good is left behind. A point that was not reached says nothing new: what was found there before goes home once
     * more.
     */
    static List<Carried> of(Day day, Visit visit) {
        Map<String, Carried> home = new LinkedHashMap<>();
        day.books()
                .register()
                .carriedBy(visit.machineId())
                .forEach(each -> home.put(each.finding().pointId(), each));
        TakenHome takes = new TakenHome(day, visit);
        visit.findings().forEach(finding -> takes.put(home, finding));
        return new ArrayList<>(home.values());
    }

    private void put(Map<String, Carried> home, Finding finding) {
        Carried now = new Carried(visit.machineId(), visit.id(), finding);
        if (finding.mark() == Mark.NOT_REACHED) {
            home.merge(finding.pointId(), now, TakenHome::newsOf);
        } else if (finding.mark() == Mark.GOOD || isMended(day, visit, finding)) {
            home.remove(finding.pointId());
        } else {
            home.put(finding.pointId(), now);
        }
    }

    private static Carried newsOf(Carried before, Carried notReached) {
        return before.finding().mark() == Mark.NOT_REACHED ? notReached : before;
    }

    /**
     * Whether the work that puts a finding right was done after it was found. Where it stops riding the work alone does not: somebody who
     * may sign off has to look and say that it is good.
     */
    public static boolean isMended(Day day, Visit visit, Finding finding) {
        Optional<Point> point = day.books()
                .catalogue()
                .expectClass(day.machineOf(visit).classId())
                .findPoint(finding.pointId());
        return finding.isFix()
                && point.filter(each -> !each.stopsRiding())
                        .flatMap(Point::fixedBy)
                        .filter(workId -> isDoneSince(visit, workId, finding.at()))
                        .isPresent();
    }

    private static boolean isDoneSince(Visit visit, String workId, Instant found) {
        return visit.lines().stream()
                .filter(line -> line.workId().equals(workId) && visit.isDone(line))
                .flatMap(line -> visit.tasksOf(line).stream())
                .flatMap(task -> task.progress().ended().stream())
                .anyMatch(ended -> !ended.isBefore(found));
    }
}
