package org.shedboard.pack.lab;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Constraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * When one task is and who does it. Its start is a wall minute; for each person the starts fall into {@link Piece}s, exactly one of
 * which holds for each of its crew, and which says the end and the overtime as plain sums.
 */
final class TaskVariables {
    private record Choice(Piece piece, BoolVar isTaken) {}

    final Work work;
    final Literal placed;
    /** When the work starts from now on; for settled work when it began. */
    LinearArgument start;

    LinearArgument end;
    /** Whether this person is of the crew. */
    final Map<String, BoolVar> by = new LinkedHashMap<>();

    private final Map<String, List<Choice>> choices = new LinkedHashMap<>();
    private final Map<String, IntVar> workStarts = new LinkedHashMap<>();
    private final Map<String, IntVar> sloped = new LinkedHashMap<>();
    private final CpModel model;
    private final Network network;
    private final String name;

    TaskVariables(CpModel model, Network network, Work work, Literal placed) {
        this.model = model;
        this.network = network;
        this.work = work;
        this.placed = placed;
        name = work.job.id() + "/" + work.stayIndex + "/" + work.task.id();
        if (work.isSettled()) {
            start = LinearExpr.constant(network.problem.now());
            end = LinearExpr.constant(work.settledEnd);
        } else {
            addTimes();
            work.able.forEach(this::addPerson);
            addCrew();
        }
    }

    private void addTimes() {
        int latest = Math.max(work.earliest, work.latestEnd());
        if (work.latestEnd() < work.earliest) {
            forbid(placed);
        }
        start = model.newIntVar(work.earliest, latest, "start " + name);
        if (work.crew() == 0) {
            end = start;
        } else {
            end = model.newIntVar(work.earliest, latest, "end " + name);
        }
        work.task.at().ifPresent(minute -> {
            if (!work.isInterrupted()) {
                model.addEquality(start, minute).onlyEnforceIf(placed);
            }
        });
    }

    private void addPerson(String person, int minutes) {
        WorkCalendar calendar = network.calendars.get(person);
        List<Choice> taken = new ArrayList<>();
        for (Piece piece : Piece.of(calendar, minutes, work.earliest, work.latestEnd(), work.closed)) {
            taken.add(new Choice(piece, model.newBoolVar(name + " " + person + " from " + piece.from())));
        }
        if (taken.isEmpty()) {
            return;
        }
        BoolVar isHere = model.newBoolVar(name + " by " + person);
        by.put(person, isHere);
        choices.put(person, taken);
        model.addEquality(sum(taken.stream().map(Choice::isTaken).toList()), isHere);
        tie(isHere, taken);
        addWorkStart(person, isHere, calendar, taken);
        addOvertime(person, taken);
    }

    private void tie(BoolVar isHere, List<Choice> taken) {
        LinearExprBuilder least = LinearExpr.newBuilder();
        LinearExprBuilder most = LinearExpr.newBuilder();
        LinearExprBuilder over = LinearExpr.newBuilder().add(start);
        for (Choice choice : taken) {
            least.addTerm(choice.isTaken, choice.piece.from());
            most.addTerm(choice.isTaken, choice.piece.to());
            over.addTerm(choice.isTaken, choice.piece.elapsed());
        }
        model.addGreaterOrEqual(start, least).onlyEnforceIf(isHere);
        model.addLessOrEqual(start, most).onlyEnforceIf(isHere);
        Constraint tied = work.crew() == 1 ? model.addEquality(end, over) : model.addGreaterOrEqual(end, over);
        tied.onlyEnforceIf(isHere);
    }

    /** The start in the person's own working minutes: there the work is one run, whatever breaks it spans. */
    private void addWorkStart(String person, BoolVar isHere, WorkCalendar calendar, List<Choice> taken) {
        int first = calendar.workedBefore(taken.get(0).piece.from());
        int last = calendar.workedBefore(taken.get(taken.size() - 1).piece.to());
        IntVar workStart = model.newIntVar(first, last, name + " worked " + person);
        LinearExprBuilder wall = LinearExpr.newBuilder().add(workStart);
        taken.forEach(choice -> wall.addTerm(choice.isTaken, choice.piece.breaks()));
        model.addEquality(start, wall).onlyEnforceIf(isHere);
        workStarts.put(person, workStart);
    }

    private void addOvertime(String person, List<Choice> taken) {
        if (taken.stream().allMatch(choice -> choice.piece.overtimeStep() == 0)) {
            return;
        }
        IntVar minutes = model.newIntVar(0, work.able.get(person), name + " overtime " + person);
        LinearExprBuilder least = LinearExpr.newBuilder();
        for (Choice choice : taken) {
            Piece piece = choice.piece;
            least.addTerm(choice.isTaken, piece.leastOvertime());
            if (piece.overtimeStep() != 0) {
                long constant = piece.overtime() - (long) piece.overtimeStep() * piece.from();
                model.addGreaterOrEqual(minutes, LinearExpr.affine(start, piece.overtimeStep(), constant))
                        .onlyEnforceIf(choice.isTaken);
            }
        }
        model.addGreaterOrEqual(minutes, least);
        sloped.put(person, minutes);
    }

    private void addCrew() {
        int crew = work.crew();
        if (crew == 0) {
            return;
        }
        if (by.size() < crew) {
            forbid(placed);
            by.values().forEach(this::forbid);
            return;
        }
        LinearExpr people = sum(by.values());
        model.addEquality(people, LinearExpr.newBuilder().addTerm(placed, crew));
        if (work.task.person().isPresent() && !work.isInterrupted()) {
            BoolVar pinned = by.get(work.task.person().get());
            if (pinned == null) {
                forbid(placed);
            } else {
                model.addImplication(placed, pinned);
            }
        }
    }

    private void forbid(Literal literal) {
        model.addEquality(literal, 0);
    }

    static LinearExpr sum(Iterable<? extends Literal> literals) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        literals.forEach(literal -> sum.addTerm(literal, 1));
        return sum.build();
    }

    void addBusy(Map<String, List<IntervalVar>> busy) {
        workStarts.forEach((person, workStart) -> busy.get(person)
                .add(model.newOptionalFixedSizeIntervalVar(
                        workStart, work.able.get(person), by.get(person), name + " busy " + person)));
        if (work.isGoing()) {
            String person = work.settledPeople().get(0);
            int from = network.calendars.get(person).workedBefore(network.problem.now());
            int left = work.task.started().orElseThrow().left();
            busy.get(person).add(model.newFixedInterval(from, left, name + " going"));
        }
    }

    /** Adds what the overtime of the crew costs. */
    void addOvertimeCost(LinearExprBuilder cost, long each) {
        choices.forEach((person, taken) -> {
            if (sloped.containsKey(person)) {
                cost.addTerm(sloped.get(person), each);
            } else {
                taken.forEach(choice -> cost.addTerm(choice.isTaken, each * choice.piece.overtime()));
            }
        });
        if (work.isGoing()) {
            String person = work.settledPeople().get(0);
            cost.add(each * network.calendars.get(person).overtime(network.problem.now(), work.settledEnd));
        }
    }

    LinearExpr complete() {
        return LinearExpr.newBuilder().add(end).add(work.task.unattended()).build();
    }

    /** Points the search at a plan; {@code people} are those of the crew. */
    void hint(int startMinute, int endMinute, List<String> people) {
        if (work.isSettled()) {
            return;
        }
        model.addHint((IntVar) start, startMinute);
        if (work.crew() > 0) {
            model.addHint((IntVar) end, endMinute);
        }
        by.forEach((person, isHere) -> {
            boolean here = people.contains(person);
            model.addHint((Literal) isHere, here);
            if (here) {
                model.addHint(
                        workStarts.get(person), network.calendars.get(person).workedBefore(startMinute));
            }
            choices.get(person)
                    .forEach(
                            choice -> model.addHint((Literal) choice.isTaken, here && choice.piece.holds(startMinute)));
        });
    }
}
