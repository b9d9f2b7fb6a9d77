package org.shedboard.board;

import java.time.LocalDate;
import java.util.Optional;
import org.shedboard.day.Books;
import org.shedboard.day.Clocks;
import org.shedboard.day.Figures;
import org.shedboard.day.RingList;
import org.shedboard.register.NextDue;
import org.shedboard.register.Rung;
import org.shedboard.register.WorkLoad;
import org.shedboard.words.Words;

/** Whom to ring, said: on the screen and by the command alike. */
public final class RingWords {
    private RingWords() {}

    public static String title(int weeks) {
        return weeks == 1 ? Words.say("ring.title.one") : Words.say("ring.title.more", weeks);
    }

    /** What the list is of. */
    public static String due(int weeks) {
        return weeks == 1 ? Words.say("round.due.one") : Words.say("round.due.more", weeks);
    }

    /** How many there are and what they would bring; a sentence of its own where there are none. */
    public static String total(RingList list) {
        return list.calls().isEmpty()
                ? Words.say("ring.nobody", Clocks.sayFullDate(list.until().minusDays(1)))
                : Words.say("ring.total", list.calls().size(), hours(list.load()));
    }

    public static String hours(WorkLoad load) {
        return Figures.hours(load.minutes());
    }

    /** How late it is by the likely date, or how soon it is due. */
    public static String late(NextDue due, LocalDate today) {
        long left = due.daysLeft(today);
        if (left < 0) {
            return left == -1 ? Words.say("ring.one_over") : Words.say("ring.over", -left);
        }
        if (left > 1) {
            return Words.say("ring.ahead", left);
        }
        return Words.say(left == 0 ? "ring.today" : "ring.tomorrow");
    }

    /** What it is due by: at what the meter shows then, or by the months. */
    public static String by(NextDue due) {
        return due.dial()
                .map(dial -> Words.say("ring.by_meter", dial.sayDue(), dial.sayNow()))
                .orElse(Words.say("ring.by_months"));
    }

    /** The same where there is little room: what the meter shows when it is due. */
    public static String byShort(NextDue due) {
        return due.dial().map(NextDue.Dial::sayDue).orElse(Words.say("ring.months"));
    }

    /** From the day it may be due if it is used much to the day if it is used little; one date where both are the same. */
    public static String range(NextDue.Dates dates) {
        return dates.isSharp()
                ? Clocks.sayFullDate(dates.likely())
                : Words.say("ring.range", Clocks.sayFullDate(dates.early()), Clocks.sayFullDate(dates.late()));
    }

    /** All of it in a sentence. */
    public static String sentence(RingList.Call call) {
        NextDue.Dates dates = call.due().dates();
        String label = call.machine().label();
        String work = call.work().name();
        String likely = Clocks.sayFullDate(dates.likely());
        return dates.isSharp()
                ? Words.say("ring.detail_due", label, work, by(call.due()), likely)
                : Words.say(
                        "ring.detail_range",
                        label,
                        work,
                        by(call.due()),
                        likely,
                        Clocks.sayFullDate(dates.early()),
                        Clocks.sayFullDate(dates.late()));
    }

    /** What was said on the telephone when it rang last. */
    public static Optional<String> rung(Books books, RingList.Call call) {
        return call.rung()
                .map(rung -> Words.say(
                        "ring.detail_rung",
                        Clocks.sayFullDate(
                                LocalDate.ofInstant(rung.at(), books.shop().zone())),
                        books.nameOf(rung.by()),
                        said(rung)));
    }

    private static String said(Rung rung) {
        String said = Words.say(
                "rungSaid." + rung.said(), rung.again().map(Clocks::sayFullDate).orElse(""));
        return rung.note().isEmpty() ? said : said + " (" + rung.note() + ")";
    }
}
