package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.story.Difference;
import org.shedboard.shop.Person;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * A move by hand before it is done: the act carried out on a copy of the day, so that what is seen is what comes of it.
 *
 * @param refused why it cannot be done
 * @param after the day by the plan that would be posted; as it is where the move is refused
 * @param difference what moves
 * @param snags what it breaks, the gravest first
 * @param cost points that the plan costs more; less where it is negative
 */
public record Tried(
        Act.PinTask act,
        Optional<Refusal> refused,
        Outlook after,
        Optional<Difference> difference,
        List<Snag> snags,
        long cost) {
    public Tried {
        snags = List.copyOf(snags);
    }

    /** The move tried at the moment of the outlook. */
    public static Tried of(Outlook before, Act.PinTask act) {
        Outcome outcome = Planning.carryOut(before.day(), act, before.at());
        if (outcome instanceof Outcome.Refused refused) {
            return new Tried(act, Optional.of(refused.refusal()), before, Optional.empty(), List.of(), 0);
        }
        Day day = ((Outcome.Done) outcome).day();
        Plan plan = day.posted().orElseThrow().plan();
        Difference difference = before.differenceTo(plan);
        Outlook after = before.with(day, plan);
        return new Tried(
                act,
                Optional.empty(),
                after,
                Optional.of(difference),
                snags(before, after, act, difference),
                plan.cost() - before.plan().cost());
    }

    /** Minutes that one machine would have to be ready later to be as dear as this; negative where it gains. */
    public long minutesDearer() {
        return Math.round((double) cost / Problems.POINTS_A_MINUTE);
    }

    private static List<Snag> snags(Outlook before, Outlook after, Act.PinTask act, Difference difference) {
        List<Snag> snags = new ArrayList<>();
        difference.jobs().forEach(job -> promise(after, job).ifPresent(snags::add));
        act.pin().personId().ifPresent(person -> snags.addAll(ofPerson(before, after, act, person)));
        snags.sort(Comparator.comparing(Snag::kind));
        return snags;
    }

    private static Optional<Snag> promise(Outlook after, Difference.Changed job) {
        Day day = after.day();
        Visit visit = day.expectVisit(job.job());
        if (job.before().isPresent() && job.after().isEmpty()) {
            return Optional.of(Snag.of(Snag.Kind.LEFT_OUT, Names.of(day, visit)));
        }
        if (job.promise() != Difference.Promise.NOW_MISSED || job.after().isEmpty()) {
            return Optional.empty();
        }
        Instant promised = visit.promise().orElseThrow().at();
        String ready = Clocks.sayTime(day, day.instantOf(job.after().getAsInt()));
        return Optional.of(
                Snag.of(Snag.Kind.PROMISE_MISSED, Names.of(day, visit), Clocks.sayTime(day, promised), ready));
    }

    private static List<Snag> ofPerson(Outlook before, Outlook after, Act.PinTask act, String personId) {
        Day day = after.day();
        Person person = day.shop().expectPerson(personId);
        Task task = day.expectVisit(act.visitId()).findTask(act.taskId()).orElseThrow();
        List<Snag> snags = new ArrayList<>();
        if (!person.may(task.skill())) {
            snags.add(Snag.of(Snag.Kind.SKILL_LENT, person.name(), Problems.skill(task.skill()), task.name()));
        }
        act.pin()
                .at()
                .filter(at -> !isIn(before.problem(), personId, day.minuteOf(at)))
                .ifPresent(at -> snags.add(Snag.of(Snag.Kind.OFF_HOURS, person.name(), Clocks.sayTime(day, at))));
        return snags;
    }

    private static boolean isIn(Problem problem, String personId, int minute) {
        return problem.people().stream()
                .filter(person -> person.id().equals(personId))
                .flatMap(person -> person.shifts().stream())
                .anyMatch(span -> span.contains(minute));
    }
}
