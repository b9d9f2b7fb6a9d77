package org.shedboard.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.day.Books;
import org.shedboard.day.Names;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.hours.DecimalHours;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.Rounding;
import org.shedboard.hours.Stretch;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Visit;
import org.shedboard.shop.WorkKind;
import org.shedboard.words.Words;

/** What is said of a tally in sentences, alike on the screen, in commands and on paper. */
public final class TallyWords {
    private TallyWords() {}

    /** Of which days it is. */
    public static String title(SpanTally tally) {
        String first = Stamps.date(tally.ledger().from());
        String last = Stamps.date(tally.ledger().until().minusDays(1));
        return first.equals(last) ? Words.say("tally.title", first) : Words.say("tally.span_title", first, last);
    }

    /** Who closed a day, and when. */
    public static String closed(SpanTally tally, Opening.Closed closed) {
        return Words.say(
                "tally.closed_by", tally.ledger().books().nameOf(closed.by()), Stamps.of(tally.ledger(), closed.at()));
    }

    /** Who worked on a machine and for how long, how much of it elsewhere, and what the machine comes back from. */
    public static String who(SpanTally tally, VisitTally visit) {
        String people = visit.people().entrySet().stream()
                .map(entry -> tally.ledger().books().nameOf(entry.getKey()) + " " + entry.getValue())
                .collect(Collectors.joining(", "));
        String lent = visit.lent() > 0 ? " " + Words.say("tally.of_which_lent", visit.lent()) : "";
        return (people + lent + " " + comesBack(tally, visit)).strip();
    }

    /** What a time on a machine is marked with in a drawing: its tag, or what its owner is called where it has none any more. */
    public static String tag(SpanTally tally, Stretch stretch) {
        return visitOf(tally, stretch)
                .map(visit -> visit.tag().isPresent()
                        ? String.valueOf(visit.tag().getAsInt())
                        : tally.ledger().books().ownerOf(visit).name().split(",", 2)[0])
                .orElse("");
    }

    /** The machine a time was spent on. */
    public static Optional<Visit> visitOf(SpanTally tally, Stretch stretch) {
        return stretch.on()
                .filter(Activity.OnStay.class::isInstance)
                .map(on -> ((Activity.OnStay) on).visitId())
                .flatMap(id -> tally.ledger().visits().stream()
                        .filter(each -> each.id().equals(id))
                        .findFirst());
    }

    /** What somebody still has to say something to, or that does not fit together. */
    public static List<String> open(SpanTally tally) {
        Books books = tally.ledger().books();
        List<String> lines = new ArrayList<>();
        for (ClockEntry entry : tally.hours().unsettled()) {
            String who = books.nameOf(entry.personId());
            lines.add(
                    entry.isAtWork()
                            ? Words.say("tally.not_left", who, time(tally, entry))
                            : Words.say("tally.unsettled", who, on(tally, entry), time(tally, entry)));
        }
        for (PersonHours hours : tally.hours().people()) {
            if (hours.restsToSay() > 0) {
                lines.add(Words.say("tally.rest_to_say", books.nameOf(hours.personId()), hours.restsToSay()));
            }
        }
        for (ClockEntry entry : tally.hours().overlapped()) {
            lines.add(Words.say(
                    "tally.overlapped",
                    books.nameOf(entry.personId()),
                    entry.id(),
                    on(tally, entry),
                    time(tally, entry)));
        }
        return lines;
    }

    private static String time(SpanTally tally, ClockEntry entry) {
        return Stamps.of(tally.ledger(), entry.from());
    }

    /** What a clock entry is spent on. */
    public static String on(SpanTally tally, ClockEntry entry) {
        return on(tally, entry.activity());
    }

    /** What a row of the hours is spent on, and whether it counts. */
    public static String row(SpanTally tally, HoursRow row) {
        String what = on(tally, row.entry());
        return row.counts() ? what : Words.say("rows.struck", what);
    }

    /** Who put a row right, when and why, and what it was before; empty for a row that was clocked. */
    public static Optional<String> correction(SpanTally tally, HoursRow row) {
        return row.entry().correction().map(correction -> correction(tally, row, correction));
    }

    private static String correction(SpanTally tally, HoursRow row, Correction correction) {
        String by = tally.ledger().books().nameOf(correction.by());
        String at = Stamps.of(tally.ledger(), correction.at());
        return row.replaced()
                .map(old -> Words.say(
                        "rows.corrected", by, at, correction.why(), on(tally, old), time(tally, old), end(tally, old)))
                .orElse(Words.say("rows.added", by, at, correction.why()));
    }

    private static String end(SpanTally tally, ClockEntry entry) {
        return entry.to().map(to -> Stamps.of(tally.ledger(), to)).orElse(Words.say("rows.goes_on"));
    }

    /** The same of an activity. */
    public static String on(SpanTally tally, Activity activity) {
        if (activity instanceof Activity.OtherWork work) {
            return Words.say("otherWork." + work.kind());
        }
        if (activity instanceof Activity.Break pause) {
            return Words.say("break." + pause.kind());
        }
        if (activity instanceof Activity.Lent lent) {
            return Words.say("tally.lent", machine(tally, lent.to()), machine(tally, lent.from()));
        }
        return activity instanceof Activity.OnStay on ? machine(tally, on) : Words.say("tally.at_work");
    }

    private static String machine(SpanTally tally, Activity.OnStay on) {
        return tally.ledger().visits().stream()
                .filter(visit -> visit.id().equals(on.visitId()))
                .findFirst()
                .map(visit -> Names.of(tally.ledger().books(), visit) + ", "
                        + on.taskId()
                                .flatMap(visit::findTask)
                                .map(task -> task.name())
                                .orElse(Words.say(on.step())))
                .orElse(on.visitId());
    }

    /** What each person did on machines and besides, by kind of work, in hours. */
    public static List<String> kinds(SpanTally tally) {
        List<String> lines = new ArrayList<>();
        for (PersonHours person : tally.hours().people()) {
            List<String> kinds = new ArrayList<>();
            tally.byKind(person.onStays())
                    .forEach((kind, minutes) -> kinds.add(Words.say("tally.kind", kind(kind), hours(minutes))));
            person.other()
                    .forEach((kind, minutes) ->
                            kinds.add(Words.say("tally.kind", Words.say("otherWork." + kind), hours(minutes))));
            if (!kinds.isEmpty()) {
                String name = tally.ledger().books().nameOf(person.personId());
                lines.add(Words.say("tally.kinds", name, String.join(", ", kinds)));
            }
        }
        return lines;
    }

    /** What a kind of work is called; what no record tells apart is called that. */
    static String kind(Optional<WorkKind> kind) {
        return kind.map(each -> Words.say(each)).orElse(Words.say("tally.kind_untold"));
    }

    /** How the shop did: hoists, promises, and the two ratios of the trade with what they mean. */
    public static List<String> shop(SpanTally tally) {
        List<String> lines = new ArrayList<>();
        for (HoistHours hoist : tally.hoists()) {
            lines.add(Words.say(
                    "tally.hoist",
                    hoist.hoist().name(),
                    hours(hoist.used()),
                    hours(hoist.open()),
                    percent(new Ratio(hoist.used(), hoist.open()))));
        }
        lines.add(Words.say(
                tally.isClosed() ? "tally.promises_all" : "tally.promises",
                tally.promises().due(),
                tally.promises().kept()));
        lines.add(ratio("tally.on_machines_of_attended", tally.onMachinesOfAttended()));
        lines.add(ratio("tally.estimated_of_on_machines", tally.estimatedOfOnMachines()));
        return lines;
    }

    private static String ratio(String name, Ratio ratio) {
        return Words.say(name, hours(ratio.top()), hours(ratio.bottom()), percent(ratio));
    }

    /** In a hundred; a dash where nothing can be divided by. */
    public static String percent(Ratio ratio) {
        return ratio.percent()
                .map(BigDecimal::toPlainString)
                .map(percent -> Words.say("tally.percent", percent))
                .orElse(Words.say("tally.no_ratio"));
    }

    private static String hours(int minutes) {
        return DecimalHours.of(minutes).toPlainString();
    }

    /** By what rules the hours are counted. */
    public static List<String> rules(HoursRules rules) {
        return List.of(
                Words.say("rules.attendance", rounding(rules.attendance())),
                Words.say(
                        rules.breaks().isPlannedTaken() ? "rules.breaks_planned" : "rules.breaks_clocked",
                        rules.breaks().restMinutes(),
                        rules.breaks().mealMinutes()),
                Words.say("rules.charge", Words.say("basis." + rules.basis()), rounding(rules.charge())),
                Words.say("rules.lent", rules.lentMinutes()),
                Words.say("rules.codes_first"));
    }

    private static String rounding(Rounding rounding) {
        return rounding.unit() == Rounding.Unit.EXACT
                ? Words.say("rounding.EXACT")
                : Words.say(
                        "rounding.to",
                        Words.say("rounding." + rounding.direction()),
                        Words.say("rounding." + rounding.unit()));
    }

    /** What rounding came to, with its sign, in hours. */
    public static String signed(int minutes) {
        return minutes > 0 ? "+" + hours(minutes) : hours(minutes);
    }

    /** The visit a machine comes back from; nothing where it does not. */
    public static String comesBack(SpanTally tally, VisitTally visit) {
        return visit.earlier()
                .flatMap(Visit::finished)
                .map(done ->
                        Words.say("tally.comes_back", Stamps.date(tally.ledger().dateOf(done))))
                .orElse("");
    }
}
