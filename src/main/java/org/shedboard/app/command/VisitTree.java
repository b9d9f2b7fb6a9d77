package org.shedboard.app.command;

import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Day;
import org.shedboard.day.LastTime;
import org.shedboard.day.Outlook;
import org.shedboard.day.Riding;
import org.shedboard.estimate.Estimate;
import org.shedboard.files.Fields;
import org.shedboard.pack.Plan;
import org.shedboard.screen.WhyLine;
import org.shedboard.screen.YardEntry;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Handover;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Person;
import org.shedboard.shop.Visit;

/** One visit as JSON, the same wherever a command speaks of one. */
final class VisitTree {
    private final Outlook outlook;
    private final Day day;
    private final Visit visit;
    private final YardEntry entry;

    private VisitTree(Outlook outlook, Visit visit) {
        this.outlook = outlook;
        this.day = outlook.day();
        this.visit = visit;
        this.entry = new YardEntry(outlook, visit);
    }

    static Map<String, Object> of(Outlook outlook, Visit visit) {
        return new VisitTree(outlook, visit).tree();
    }

    private Map<String, Object> tree() {
        Machine machine = day.machineOf(visit);
        Optional<Estimate.Range> left = entry.rangeLeft();
        return new Tree()
                .put("id", visit.id())
                .put("tag", visit.tag())
                .put("owner", day.ownerOf(visit).name())
                .put("machine", machine.label())
                .put("class", machine.classId())
                .put("state", visit.state())
                .put("mud", visit.intake().mud().grade())
                .put("depth", visit.intake().depth())
                .put("likely", left.map(Estimate.Range::likely))
                .put("safe", left.map(Estimate.Range::safe))
                .put("place", visit.standsIn())
                .put("next", entry.nextTime().map(this::next))
                .put("why", WhyLine.of(outlook, visit))
                .put("ready", outlook.readyAt(visit.id()).map(at -> Tree.time(day, at)))
                .put("promise", visit.promise().map(said -> Tree.time(day, said.at())))
                .put("chance", outlook.chanceOfPromise(visit))
                .put("notToBeRidden", Riding.isStopped(day, visit))
                .put("findings", visit.findings().stream().map(this::finding).toList())
                .put(
                        "lastTime",
                        LastTime.of(day, visit).stream()
                                .map(each -> finding(each.finding()))
                                .toList())
                .put("handover", visit.handover().map(this::handover))
                .fields();
    }

    private Map<String, Object> finding(Finding finding) {
        return new Tree()
                .put("point", finding.pointId())
                .put("mark", finding.mark())
                .put(
                        "measured",
                        finding.measured().isPresent() ? finding.measured().getAsDouble() : null)
                .put("note", finding.note())
                .put("by", finding.by())
                .put("at", Tree.time(day, finding.at()))
                .put("ownerSaid", finding.word().map(word -> Fields.nameOf(word.answer())))
                .fields();
    }

    private Map<String, Object> handover(Handover handover) {
        return new Tree()
                .put("by", handover.by())
                .put("to", handover.to())
                .put("told", handover.told())
                .put("at", Tree.time(day, handover.at()))
                .fields();
    }

    private Map<String, Object> next(Plan.TaskTime time) {
        return new Tree()
                .put("task", time.task())
                .put("name", outlook.taskOf(time).name())
                .put("place", entry.placeOf(time))
                .put("person", time.person().flatMap(day.shop()::findPerson).map(Person::name))
                .put("from", Tree.time(day, day.instantOf(time.start())))
                .fields();
    }
}
