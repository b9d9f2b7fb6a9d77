package org.shedboard.app.command;

import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Names;
import org.shedboard.files.Fields;
import org.shedboard.hours.PersonDay;
import org.shedboard.hours.Stretch;
import org.shedboard.hours.Stretch.Use;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.tally.HoistHours;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.LineTally;
import org.shedboard.tally.Ratio;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.VisitTally;

/** The hours of a day or a span as JSON; all times in minutes. */
final class TallyTree {
    private final SpanTally tally;
    private final Ledger ledger;

    private TallyTree(SpanTally tally) {
        this.tally = tally;
        this.ledger = tally.ledger();
    }

    static Map<String, Object> of(SpanTally tally) {
        return new TallyTree(tally).tree();
    }

    static Map<String, Object> totals(SpanTally tally) {
        return new TallyTree(tally).totals().fields();
    }

    private Tree totals() {
        return new Tree()
                .put("attended", tally.hours().attended())
                .put("onMachines", tally.hours().onMachines())
                .put("other", tally.hours().minutes(use -> use == Use.OTHER_WORK))
                .put("rests", tally.hours().minutes(Use::isRest))
                .put("unaccounted", tally.hours().minutes(use -> use == Use.UNACCOUNTED))
                .put("rounding", tally.hours().rounding())
                .put("estimated", tally.estimated())
                .put("chargeable", tally.chargeable())
                .put("promisesDue", tally.promises().due())
                .put("promisesKept", tally.promises().kept());
    }

    private Map<String, Object> tree() {
        return totals().put("date", ledger.from().toString())
                .put("to", ledger.until().minusDays(1).toString())
                .put("state", state())
                .put("onMachinesOfAttended", percent(tally.onMachinesOfAttended()))
                .put("estimatedOfOnMachines", percent(tally.estimatedOfOnMachines()))
                .put("people", tally.hours().people().stream().map(this::person).toList())
                .put("days", tally.hours().days().stream().map(this::day).toList())
                .put("visits", tally.visits().stream().map(this::visit).toList())
                .put("hoists", tally.hoists().stream().map(TallyTree::hoist).toList())
                .put(
                        "unsettled",
                        tally.hours().unsettled().stream()
                                .map(entry -> entry.id())
                                .toList())
                .fields();
    }

    private String state() {
        if (ledger.openings().isEmpty()) {
            return "not-open";
        }
        return tally.isClosed() ? "closed" : "open";
    }

    private static Optional<String> percent(Ratio ratio) {
        return ratio.percent().map(percent -> percent.toPlainString());
    }

    private Map<String, Object> person(PersonHours hours) {
        Tree kinds = new Tree();
        tally.byKind(hours.onStays())
                .forEach((kind, minutes) -> kinds.put(kind.map(Fields::nameOf).orElse("not-told-apart"), minutes));
        Tree other = new Tree();
        hours.other().forEach((kind, minutes) -> other.put(Fields.nameOf(kind), minutes));
        return new Tree()
                .put("person", hours.personId())
                .put("name", ledger.books().nameOf(hours.personId()))
                .put("attended", hours.attended())
                .put("onMachines", hours.onMachines())
                .put("byKind", kinds.fields())
                .put("other", other.fields())
                .put("rests", hours.rests())
                .put("restsToSay", hours.restsToSay())
                .put("free", hours.free())
                .put("unaccounted", hours.unaccounted())
                .put("rounding", hours.rounding())
                .put("paid", hours.paid())
                .fields();
    }

    private Map<String, Object> day(PersonDay day) {
        return new Tree()
                .put("person", day.personId())
                .put("date", day.date().toString())
                .put("attended", day.attended())
                .put("rounding", day.rounding())
                .put("stretches", day.stretches().stream().map(this::stretch).toList())
                .fields();
    }

    private Map<String, Object> stretch(Stretch stretch) {
        return new Tree()
                .put("from", stretch.from().toString())
                .put("to", stretch.to().toString())
                .put("use", stretch.use())
                .fields();
    }

    private Map<String, Object> visit(VisitTally visit) {
        return new Tree()
                .put("visit", visit.visit().id())
                .put("name", Names.of(ledger.books(), visit.visit()))
                .put("estimated", visit.estimated())
                .put("worked", visit.worked())
                .put("cleaning", visit.cleaning())
                .put("lent", visit.lent())
                .put("people", visit.people())
                .put("comesBackFrom", visit.earlier().map(earlier -> earlier.id()))
                .put("lines", visit.lines().stream().map(TallyTree::line).toList())
                .fields();
    }

    private static Map<String, Object> line(LineTally line) {
        return new Tree()
                .put("line", line.line().id())
                .put("name", line.line().name())
                .put("payer", line.line().payer())
                .put("estimated", line.estimated())
                .put("worked", line.worked())
                .put("cleaning", line.cleaning())
                .put("chargeable", line.chargeable())
                .fields();
    }

    private static Map<String, Object> hoist(HoistHours hoist) {
        return new Tree()
                .put("place", hoist.hoist().id())
                .put("used", hoist.used())
                .put("open", hoist.open())
                .fields();
    }
}
