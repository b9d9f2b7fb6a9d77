package org.shedboard.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.fault.Fault;
import org.shedboard.pack.fault.ProblemCheck;

/** The day file: one packing problem as JSON, refused unless everything in it is known, in range and agrees with the rest. */
public final class DayFile {
    private static final int LARGEST = ProblemCheck.LARGEST;
    private static final double WIDEST_SPREAD = 3;

    private DayFile() {}

    /** The problem, or every fault of its text. */
    public static Reading<Problem> read(String text) {
        List<Fault> faults = new ArrayList<>();
        Optional<Problem> problem = Fields.parse(text, faults).map(fields -> {
            Problem read = read(fields);
            fields.end();
            return read;
        });
        problem.ifPresent(read -> addDisagreements(read, faults));
        return new Reading<>(faults.isEmpty() ? problem : Optional.empty(), List.copyOf(faults));
    }

    /** What is wrong where something could not be read is only the echo of that. */
    private static void addDisagreements(Problem problem, List<Fault> faults) {
        Set<String> unread = faults.stream().map(Fault::where).collect(Collectors.toSet());
        ProblemCheck.faults(problem).stream()
                .filter(fault -> !isWithin(fault.where(), unread))
                .forEach(faults::add);
    }

    /** Whether a place, or one that it is a part of, is among those; {@code jobs[3].stays[0]} is a part of {@code jobs[3]}. */
    private static boolean isWithin(String place, Set<String> places) {
        for (int end = 1; end < place.length(); end++) {
            boolean isPart = place.charAt(end) == '.' || place.charAt(end) == '[';
            if (isPart && places.contains(place.substring(0, end))) {
                return true;
            }
        }
        return places.contains(place);
    }

    private static Problem read(Fields fields) {
        return new Problem(
                fields.whole("now", 0, LARGEST),
                fields.whole("horizon", 0, LARGEST),
                fields.findObject("costs", DayFile::readCosts).orElse(Costs.STANDARD),
                fields.objects("places", DayFile::readPlace),
                fields.objects("people", DayFile::readPerson),
                fields.objects("jobs", DayFile::readJob),
                fields.findObject("posted", PlanFile::read),
                fields.findText("origin"));
    }

    private static Costs readCosts(Fields fields) {
        Costs standard = Costs.STANDARD;
        return new Costs(
                cost(fields, "late", standard.late()),
                cost(fields, "overtime", standard.overtime()),
                cost(fields, "flow", standard.flow()),
                cost(fields, "handover", standard.handover()),
                cost(fields, "makespan", standard.makespan()),
                cost(fields, "moved", standard.moved()),
                cost(fields, "swapped", standard.swapped()));
    }

    private static long cost(Fields fields, String name, long fallback) {
        return fields.longOr(name, fallback, 0, LARGEST);
    }

    private static Problem.Place readPlace(Fields fields) {
        return new Problem.Place(
                fields.text("id"),
                fields.text("kind"),
                fields.wholeOr("ratedKg", Problem.NO_LIMIT, 0, LARGEST),
                spans(fields, "closed", false));
    }

    private static List<Span> spans(Fields fields, String name, boolean needed) {
        return fields.pairs(name, needed, 0, LARGEST, Span::new);
    }

    private static Problem.Person readPerson(Fields fields) {
        return new Problem.Person(
                fields.text("id"),
                new LinkedHashSet<>(fields.texts("skills")),
                spans(fields, "shifts", true),
                spans(fields, "overtime", false),
                spread(fields, "sharedSpread"));
    }

    private static double spread(Fields fields, String name) {
        return fields.decimalOr(name, 0, 0, WIDEST_SPREAD);
    }

    private static Problem.Job readJob(Fields fields) {
        return new Problem.Job(
                fields.text("id"),
                fields.wholeOr("weight", 1, 0, LARGEST),
                fields.wholeOr("massKg", 0, 0, LARGEST),
                fields.wholeOr("arrives", 0, 0, LARGEST),
                fields.findWhole("promise", 0, LARGEST),
                spread(fields, "sharedSpread"),
                fields.objects("stays", DayFile::readStay));
    }

    private static Problem.Stay readStay(Fields fields) {
        return new Problem.Stay(
                fields.texts("places"), fields.findText("place"), fields.objects("tasks", DayFile::readTask));
    }

    private static Problem.Task readTask(Fields fields) {
        return new Problem.Task(
                fields.text("id"),
                fields.text("skill"),
                fields.whole("handsOn", 0, LARGEST),
                fields.wholeOr("unattended", 0, 0, LARGEST),
                fields.findTexts("after"),
                fields.wholes("handsOnBy", 0, LARGEST),
                fields.wholeOr("people", 1, 1, LARGEST),
                fields.textsOrNone("notBy"),
                fields.wholeOr("notBefore", 0, 0, LARGEST),
                fields.findText("person"),
                fields.findWhole("at", 0, LARGEST),
                spread(fields, "spread"),
                fields.findObject("started", DayFile::readStarted),
                fields.findObject("done", DayFile::readDone));
    }

    private static Problem.Started readStarted(Fields fields) {
        return new Problem.Started(
                fields.findText("person"), fields.whole("from", 0, LARGEST), fields.whole("left", 1, LARGEST));
    }

    private static Problem.Done readDone(Fields fields) {
        return new Problem.Done(
                fields.findText("person"), fields.whole("from", 0, LARGEST), fields.whole("end", 0, LARGEST));
    }
}
