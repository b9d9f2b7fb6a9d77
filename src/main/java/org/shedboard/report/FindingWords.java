package org.shedboard.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Figures;
import org.shedboard.estimate.Point;
import org.shedboard.register.Carried;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Handover;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Person;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.WorkKind;
import org.shedboard.words.Words;

/** Says findings as they stand on the sheet and on the next screen. */
public final class FindingWords {
    private FindingWords() {}

    /** A value with the unit of its point. */
    public static String value(Point point, double value) {
        String unit = point.measure().map(Point.Measure::unit).orElse("");
        return (Figures.say(value) + " " + unit).strip();
    }

    /** What was found at a point when the machine was last here, by whom and when. */
    public static String lastTime(Day day, Point point, Carried carried) {
        Finding finding = carried.finding();
        String value = finding.measured().isPresent()
                ? " " + value(point, finding.measured().getAsDouble())
                : "";
        String said = Words.say(
                "finding.last_time",
                Words.say(finding.mark()) + value,
                day.nameOf(finding.by()),
                Clocks.sayDate(day, finding.at()));
        return withNote(said, finding.note());
    }

    static String withNote(String said, String note) {
        return note.isBlank() ? said : Words.say("finding.note", said, note);
    }

    /** What the owner said of having it fixed. */
    public static String word(Day day, OwnersWord word) {
        return Words.say(
                "finding.word." + word.answer(), word.of(), day.nameOf(word.by()), Clocks.sayTime(day, word.at()));
    }

    /** Who signed it off and when; empty while nobody has. */
    public static Optional<String> signed(Day day, Visit visit) {
        return signature(visit)
                .map(done -> Words.say(
                        "finding.signed",
                        day.nameOf(done.person().orElseThrow()),
                        Clocks.sayTime(day, done.ended().orElseThrow())));
    }

    /** The last signature: work that was added after one asks for another. */
    static Optional<Progress> signature(Visit visit) {
        return visit.tasks().stream()
                .filter(task -> task.kind() == WorkKind.SIGN_OFF && task.isDone())
                .map(Task::progress)
                .reduce((earlier, later) -> later);
    }

    /** Who looked at how many points, with a word on those who may not sign off; empty where nobody looked yet. */
    public static Optional<String> lookedAt(Day day, Visit visit) {
        Map<String, Integer> points = new LinkedHashMap<>();
        day.shop().people().stream()
                .map(Person::id)
                .filter(id -> visit.findings().stream()
                        .anyMatch(finding -> finding.by().equals(id)))
                .forEach(id -> points.put(id, 0));
        visit.findings().forEach(finding -> points.merge(finding.by(), 1, Integer::sum));
        List<String> people = new ArrayList<>();
        points.forEach((person, count) -> people.add(Words.say(
                maySign(day, person) ? "finding.looked" : "finding.looked_apprentice", day.nameOf(person), count)));
        return people.isEmpty()
                ? Optional.empty()
                : Optional.of(Words.say("finding.looked_at", String.join(", ", people)));
    }

    static boolean maySign(Day day, String personId) {
        return day.shop()
                .findPerson(personId)
                .filter((Person person) -> person.may(Skill.SIGN_OFF))
                .isPresent();
    }

    /** How the machine was given back. */
    public static String handover(Day day, Handover handover) {
        return Words.say(
                "finding.handed",
                day.nameOf(handover.by()),
                handover.to(),
                Clocks.sayTime(day, handover.at()),
                handover.told());
    }

    /** Points one after the other. */
    public static String names(List<Point> points) {
        return points.stream().map(Point::name).collect(Collectors.joining(", "));
    }
}
