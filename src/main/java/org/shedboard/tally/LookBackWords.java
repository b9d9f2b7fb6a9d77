package org.shedboard.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.shedboard.day.Books;
import org.shedboard.hours.DecimalHours;
import org.shedboard.words.Words;

/** What is said of a span looked back upon, alike on the screen and by the command. */
public final class LookBackWords {
    /** Cells of the bar that stands for a hundred in a hundred. */
    private static final int WHOLE_BAR = 20;
    /** A ratio may be above a hundred; beyond this much the bar ends. */
    private static final int LONGEST_BAR = 30;

    private static final char BAR = '▓';

    private LookBackWords() {}

    /** The hours by kind of work, the most first. */
    public static String kinds(LookBack back) {
        List<String> kinds = new ArrayList<>();
        back.byKind()
                .forEach((kind, minutes) -> kinds.add(Words.say("tally.kind", TallyWords.kind(kind), hours(minutes))));
        back.other()
                .forEach((kind, minutes) ->
                        kinds.add(Words.say("tally.kind", Words.say("otherWork." + kind), hours(minutes))));
        return Words.say("back.kinds", String.join(", ", kinds));
    }

    /** The two ratios of the trade, week by week, each with a bar. */
    public static List<String> weeks(LookBack back) {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say("back.on_machines"));
        lines.addAll(weeks(back, LookBack.Week::onMachinesOfAttended));
        lines.add(Words.say("back.estimated"));
        lines.addAll(weeks(back, LookBack.Week::estimatedOfOnMachines));
        return lines;
    }

    private static List<String> weeks(LookBack back, Function<LookBack.Week, Ratio> which) {
        return back.weeks().stream()
                .map(week -> Words.say(
                        "back.week",
                        Stamps.week(week.monday()),
                        TallyWords.percent(which.apply(week)),
                        bar(which.apply(week))))
                .toList();
    }

    private static String bar(Ratio ratio) {
        int cells = ratio.percent()
                .map(percent -> percent.intValue() * WHOLE_BAR / 100)
                .orElse(0);
        return String.valueOf(BAR).repeat(Math.min(LONGEST_BAR, cells));
    }

    /** What went most over its estimate, and into what the minutes went. */
    public static List<String> overruns(LookBack back) {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say(back.overruns().isEmpty() ? "back.no_overruns" : "back.overruns"));
        back.overruns().forEach(overrun -> lines.add(overrun(back, overrun)));
        return lines;
    }

    private static String overrun(LookBack back, Overrun overrun) {
        Ledger ledger = back.tally().ledger();
        Books books = ledger.books();
        String mud = Words.say(overrun.visit().intake().mud());
        String causes = overrun.causes().stream()
                .map(cause -> Words.say("cause." + cause.kind(), cause.minutes(), mud))
                .collect(Collectors.joining("; "));
        return Words.say(
                "back.overrun",
                books.ownerOf(overrun.visit()).name(),
                books.machineOf(overrun.visit()).label(),
                overrun.visit()
                        .finished()
                        .map(done -> Stamps.date(ledger.dateOf(done)))
                        .orElse(""),
                overrun.estimated(),
                overrun.worked(),
                causes);
    }

    private static String hours(int minutes) {
        return DecimalHours.of(minutes).toPlainString();
    }
}
