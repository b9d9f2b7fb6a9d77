package org.shedboard.files;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.PastFinding;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Mark;
import org.shedboard.shop.OwnersWord;

/** The findings of one past visit, held to the rules by which a point is marked at the board. */
final class FindingFields {
    private static final double FURTHEST = 1_000_000;

    private final Optional<MachineClass> machineClass;
    private final Set<String> people;
    private final List<String> works;
    private final Map<String, String> seen = new HashMap<>();

    /**
     * @param machineClass empty where it could not be told what came
     * @param works ids of the works that were done in the visit
     */
    FindingFields(Optional<MachineClass> machineClass, Set<String> people, List<String> works) {
        this.machineClass = machineClass;
        this.people = people;
        this.works = works;
    }

    PastFinding read(Fields fields) {
        String id = fields.text("point");
        fields.unique("point", id, seen);
        machineClass.ifPresent(each -> fields.known(
                "point", id, ShopFile.ids(each.points().stream().map(Point::id)), "point of a " + each.id()));
        Optional<Point> point = machineClass.flatMap(each -> each.findPoint(id));
        Optional<Mark> mark = mark(fields);
        OptionalDouble measured = measured(fields);
        String note = fields.findText("note").orElse("");
        checkReached(fields, mark, measured, note);
        measured.ifPresent(value -> checkValue(fields, point, mark, value));
        return new PastFinding(
                id,
                mark.orElse(Mark.GOOD),
                measured,
                note,
                person(fields),
                fields.has("asked") ? asked(fields, point, mark) : Optional.empty());
    }

    private static Optional<Mark> mark(Fields fields) {
        int before = fields.faultCount();
        Mark mark = fields.oneOf("mark", Mark.class);
        return fields.faultCount() == before ? Optional.of(mark) : Optional.empty();
    }

    private static OptionalDouble measured(Fields fields) {
        if (!fields.has("measured")) {
            return OptionalDouble.empty();
        }
        int before = fields.faultCount();
        double value = fields.decimal("measured", -FURTHEST, FURTHEST);
        return fields.faultCount() == before ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static void checkReached(Fields fields, Optional<Mark> mark, OptionalDouble measured, String note) {
        if (mark.filter(Mark.NOT_REACHED::equals).isEmpty()) {
            return;
        }
        if (note.isBlank()) {
            fields.fault("note", "does not say why it was not reached");
        }
        if (measured.isPresent()) {
            fields.fault("measured", "was read off at a point that was not reached");
        }
    }

    private static void checkValue(Fields fields, Optional<Point> point, Optional<Mark> mark, double value) {
        Optional<Point.Measure> measure = point.flatMap(Point::measure);
        if (point.isPresent() && measure.isEmpty()) {
            fields.fault(
                    "measured",
                    "nothing is read off at \"%s\"".formatted(point.get().id()));
        }
        if (mark.filter(Mark.GOOD::equals).isPresent()) {
            measure.filter(each -> !each.isWithin(value))
                    .ifPresent(each -> fields.fault(
                            "mark",
                            "is good, but %s is not from %s to %s %s"
                                    .formatted(value, each.low(), each.high(), each.unit())));
        }
    }

    private Optional<PastFinding.Asked> asked(Fields fields, Optional<Point> point, Optional<Mark> mark) {
        if (mark.filter(each -> each != Mark.FIX).isPresent()) {
            fields.fault("asked", "an owner is asked about a fix only");
        }
        Optional<String> work = point.flatMap(Point::fixedBy);
        if (point.isPresent() && work.isEmpty()) {
            fields.fault(
                    "asked", "no work puts \"%s\" right".formatted(point.get().id()));
        }
        return fields.findObject("asked", each -> asked(each, work));
    }

    private PastFinding.Asked asked(Fields fields, Optional<String> work) {
        int before = fields.faultCount();
        OwnersWord.Answer answer = fields.oneOf("answer", OwnersWord.Answer.class);
        boolean isRead = fields.faultCount() == before;
        work.filter(id -> isRead && works.contains(id) != (answer == OwnersWord.Answer.YES))
                .ifPresent(id -> fields.fault("answer", contradiction(answer, id)));
        return new PastFinding.Asked(answer, work.orElse("?"), person(fields), fields.filled("of"));
    }

    private static String contradiction(OwnersWord.Answer answer, String workId) {
        String words =
                answer == OwnersWord.Answer.YES ? "is yes, but \"%s\" was not done" : "is %2$s, but \"%1$s\" was done";
        return words.formatted(workId, Fields.nameOf(answer));
    }

    private String person(Fields fields) {
        String id = fields.text("by");
        fields.known("by", id, people, "person");
        return id;
    }
}
