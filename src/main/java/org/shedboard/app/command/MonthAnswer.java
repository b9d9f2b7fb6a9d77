package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.files.Fields;
import org.shedboard.hours.DecimalHours;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.LookBack;
import org.shedboard.tally.LookBackWords;
import org.shedboard.tally.Overrun;
import org.shedboard.tally.Ratio;
import org.shedboard.tally.Stamps;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.Words;

/** A span of days looked back upon, as lines and as JSON. */
final class MonthAnswer {
    private MonthAnswer() {}

    static Answer of(LookBack back) {
        Ledger ledger = back.tally().ledger();
        List<String> lines = new ArrayList<>();
        lines.add(Words.say(
                "back.title",
                Stamps.date(ledger.from()),
                Stamps.date(ledger.until().minusDays(1))));
        lines.addAll(people(back).lines());
        lines.add(LookBackWords.kinds(back));
        lines.addAll(LookBackWords.weeks(back));
        lines.addAll(LookBackWords.overruns(back));
        lines.addAll(owners(back).lines());
        return new Answer(lines, tree(back));
    }

    private static Table people(LookBack back) {
        Table table = new Table("lrrrrr");
        table.row(
                Words.say("tally.people"),
                Words.say("tally.attended"),
                Words.say("tally.on_machines"),
                Words.say("tally.other"),
                Words.say("tally.unaccounted"),
                Words.say("tally.rounding"));
        for (PersonHours person : back.tally().hours().people()) {
            table.row(
                    back.tally().ledger().books().nameOf(person.personId()),
                    hours(person.attended()),
                    hours(person.onMachines()),
                    hours(person.otherMinutes()),
                    hours(person.unaccounted()),
                    TallyWords.signed(person.rounding()));
        }
        return table;
    }

    private static Table owners(LookBack back) {
        Table table = new Table("lrrr");
        table.row(
                Words.say("back.owner_heading"),
                Words.say("back.visits"),
                Words.say("tally.worked"),
                Words.say("tally.charged"));
        for (LookBack.OwnerHours owner : back.owners()) {
            table.row(
                    owner.owner().name(),
                    String.valueOf(owner.visits()),
                    hours(owner.worked()),
                    hours(owner.chargeable()));
        }
        return table;
    }

    private static String hours(int minutes) {
        return Words.say("tally.hours", DecimalHours.of(minutes));
    }

    private static Map<String, Object> tree(LookBack back) {
        Tree tree = new Tree();
        TallyTree.totals(back.tally()).forEach(tree::put);
        Tree kinds = new Tree();
        back.byKind()
                .forEach((kind, minutes) -> kinds.put(kind.map(Fields::nameOf).orElse("not-told-apart"), minutes));
        Tree other = new Tree();
        back.other().forEach((kind, minutes) -> other.put(Fields.nameOf(kind), minutes));
        return tree.put("from", back.tally().ledger().from().toString())
                .put("to", back.tally().ledger().until().minusDays(1).toString())
                .put("byKind", kinds.fields())
                .put("otherByKind", other.fields())
                .put("owners", back.owners().stream().map(MonthAnswer::owner).toList())
                .put("weeks", back.weeks().stream().map(MonthAnswer::week).toList())
                .put(
                        "overruns",
                        back.overruns().stream().map(MonthAnswer::overrun).toList())
                .fields();
    }

    private static Map<String, Object> owner(LookBack.OwnerHours owner) {
        return new Tree()
                .put("owner", owner.owner().id())
                .put("name", owner.owner().name())
                .put("visits", owner.visits())
                .put("worked", owner.worked())
                .put("chargeable", owner.chargeable())
                .fields();
    }

    private static Map<String, Object> week(LookBack.Week week) {
        return new Tree()
                .put("week", Stamps.week(week.monday()))
                .put("onMachinesOfAttended", percent(week.onMachinesOfAttended()))
                .put("estimatedOfOnMachines", percent(week.estimatedOfOnMachines()))
                .fields();
    }

    private static Optional<String> percent(Ratio ratio) {
        return ratio.percent().map(percent -> percent.toPlainString());
    }

    private static Map<String, Object> overrun(Overrun overrun) {
        Tree causes = new Tree();
        overrun.causes().forEach(cause -> causes.put(Fields.nameOf(cause.kind()), cause.minutes()));
        return new Tree()
                .put("visit", overrun.visit().id())
                .put("estimated", overrun.estimated())
                .put("worked", overrun.worked())
                .put("causes", causes.fields())
                .fields();
    }
}
