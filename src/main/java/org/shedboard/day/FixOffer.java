package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.shedboard.estimate.Estimate;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Work;
import org.shedboard.shop.Finding;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * What it takes to put a fix right that was found on a machine here, and what that does to the day: to be known before the owner is
 * asked.
 *
 * @param range minutes that the work adds
 * @param shortParts parts for it that are not on the shelf, and when they can be here
 * @param readyBefore when the machine is ready without the work
 * @param ready when it is ready with it
 * @param promises what becomes of every promise that is still to be kept, this machine's own included
 */
public record FixOffer(
        String visitId,
        Point point,
        Work work,
        Estimate.Range range,
        List<Cover> shortParts,
        Optional<Instant> readyBefore,
        Optional<Instant> ready,
        List<Kept> promises) {
    /** A promise that gets this much less likely, in points of a hundred, is worth a word. */
    private static final int WORTH_SAYING = 3;

    /** The chance, in a hundred, below which a promise is in danger. */
    private static final int IN_DANGER = 50;

    /**
     * A promise and the chance, in a hundred, that it is kept without the work and with it; empty where the machine is not in the
     * plan.
     */
    public record Kept(String visitId, String name, Instant promise, OptionalInt before, OptionalInt after) {
        public boolean isEndangered() {
            return before.orElse(0) >= IN_DANGER && after.orElse(0) < IN_DANGER;
        }

        public boolean isChanged() {
            return before.isPresent() != after.isPresent()
                    || Math.abs(before.orElse(0) - after.orElse(0)) >= WORTH_SAYING;
        }
    }

    public FixOffer {
        shortParts = List.copyOf(shortParts);
        promises = List.copyOf(promises);
    }

    /** The offer, or why there is none. */
    public sealed interface Answer {
        /** What is offered. */
        record Given(FixOffer offer) implements Answer {}

        /** Why nothing is. */
        record NotGiven(Refusal refusal) implements Answer {}
    }

    public static Answer of(Outlook outlook, String visitId, String pointId) {
        Day day = outlook.day();
        Optional<Visit> visit = day.findVisit(visitId);
        if (visit.isEmpty()) {
            return new Answer.NotGiven(Refusal.of("visit_unknown", visitId));
        }
        Optional<Refusal> no = refusal(day, visit.get(), pointId);
        if (no.isPresent()) {
            return new Answer.NotGiven(no.get());
        }
        Work work = workFor(day, visit.get(), pointId).orElseThrow();
        Act add = new Act.AddWork(visitId, List.of(new Act.Wanted(work.id(), Payer.OWNER)));
        Outcome outcome = Acts.apply(day, add, outlook.at());
        if (outcome instanceof Outcome.Refused refused) {
            return new Answer.NotGiven(refused.refusal());
        }
        Outlook after = Outlook.of(((Outcome.Done) outcome).day(), outlook.at());
        return new Answer.Given(of(outlook, after, visit.get(), pointId, work));
    }

    private static FixOffer of(Outlook before, Outlook after, Visit visit, String pointId, Work work) {
        return new FixOffer(
                visit.id(),
                pointOf(before.day(), visit, pointId).orElseThrow(),
                work,
                added(after, visit),
                shortParts(after, visit),
                before.readyAt(visit.id()),
                after.readyAt(visit.id()),
                promises(before, after));
    }

    private static Estimate.Range added(Outlook after, Visit visit) {
        Set<String> known = new HashSet<>(visit.tasks().stream().map(Task::id).toList());
        Visit with = after.day().expectVisit(visit.id());
        List<Task> more =
                with.tasks().stream().filter(task -> !known.contains(task.id())).toList();
        return after.day().forecastOf(with).rangeOf(more);
    }

    private static List<Cover> shortParts(Outlook after, Visit before) {
        return SetAside.of(after.day(), after.at()).of(after.day().expectVisit(before.id())).stream()
                .filter(Cover::isShort)
                .filter(cover -> cover.need()
                        .line()
                        .filter(line -> before.findLine(line.id()).isEmpty())
                        .isPresent())
                .toList();
    }

    private static List<Kept> promises(Outlook before, Outlook after) {
        List<Kept> all = new ArrayList<>();
        for (Visit visit : before.day().visits()) {
            if (visit.state().isOpen() && visit.promise().isPresent()) {
                all.add(new Kept(
                        visit.id(),
                        Names.of(before.day(), visit),
                        visit.promise().get().at(),
                        before.chanceOfPromise(visit),
                        after.chanceOfPromise(visit)));
            }
        }
        return all;
    }

    /** The promises of others that it puts in danger. */
    public List<Kept> endangered() {
        return promises.stream()
                .filter(kept -> !kept.visitId().equals(visitId) && kept.isEndangered())
                .toList();
    }

    /** Why there is nothing to ask the owner about at this point; empty where there is. */
    static Optional<Refusal> refusal(Day day, Visit visit, String pointId) {
        Optional<Finding> finding = visit.findingAt(pointId).filter(Finding::isFix);
        String name = pointOf(day, visit, pointId).map(Point::name).orElse(pointId);
        if (finding.isEmpty()) {
            return Optional.of(Refusal.of("no_fix_there", name, Names.of(day, visit)));
        }
        if (!visit.state().isHere()) {
            return Optional.of(Refusal.of("is_done", Names.of(day, visit)));
        }
        if (workFor(day, visit, pointId).isEmpty()) {
            return Optional.of(Refusal.of("no_work_for_fix", name));
        }
        return finding.flatMap(Finding::word)
                .filter(word -> word.answer() == OwnersWord.Answer.YES)
                .map(word -> Refusal.of("owner_said_yes", word.of(), name));
    }

    /** The work that puts a point of a visit's machine right, where the catalogue has one. */
    public static Optional<Work> workFor(Day day, Visit visit, String pointId) {
        return pointOf(day, visit, pointId)
                .flatMap(Point::fixedBy)
                .flatMap(day.books().catalogue()::findWork)
                .filter(work -> work.isFor(day.machineOf(visit).classId()));
    }

    private static Optional<Point> pointOf(Day day, Visit visit, String pointId) {
        return day.books()
                .catalogue()
                .expectClass(day.machineOf(visit).classId())
                .findPoint(pointId);
    }

    /** The fixes found on a visit that can be put right here and of which the owner still has to be asked. */
    public static List<Point> toAsk(Day day, Visit visit) {
        return visit.findings().stream()
                .filter(finding -> isToAsk(day, visit, finding))
                .flatMap(finding -> pointOf(day, visit, finding.pointId()).stream())
                .toList();
    }

    /** The fixes found on a visit that can be put right here, whatever the owner said short of yes. */
    public static List<Point> open(Day day, Visit visit) {
        return visit.findings().stream()
                .filter(finding -> refusal(day, visit, finding.pointId()).isEmpty())
                .flatMap(finding -> pointOf(day, visit, finding.pointId()).stream())
                .toList();
    }

    private static boolean isToAsk(Day day, Visit visit, Finding finding) {
        boolean isOpen = finding.word()
                .filter(word -> word.answer() != OwnersWord.Answer.LATER)
                .isEmpty();
        return finding.isFix()
                && isOpen
                && workFor(day, visit, finding.pointId())
                        .filter(work -> !isWantedForAll(day, visit, work))
                        .isPresent();
    }

    /** Whether the visit has as many lines of this work as it has fixes that it puts right: two split boots take two. */
    private static boolean isWantedForAll(Day day, Visit visit, Work work) {
        long lines = visit.lines().stream()
                .filter(line -> line.workId().equals(work.id()))
                .count();
        long fixes = visit.findings().stream()
                .filter(Finding::isFix)
                .filter(finding -> workFor(day, visit, finding.pointId())
                        .filter(work::equals)
                        .isPresent())
                .count();
        return lines >= fixes;
    }
}
