package org.shedboard.app.command;

import java.util.Locale;
import org.shedboard.pack.Problem;
import org.shedboard.pack.chance.KeptPromises;
import org.shedboard.pack.chance.Prudent;
import org.shedboard.words.Words;

/** What packing against risk came to, in a sentence. */
public final class RiskText {
    private RiskText() {}

    /** @param kept by the usual plan, and by the one against risk; that is the answer when it keeps more */
    public static String of(Problem problem, KeptPromises kept) {
        long promises =
                problem.jobs().stream().filter(job -> job.promise().isPresent()).count();
        return kept.isMore()
                ? Words.say(
                        "command.pack.risk_gain",
                        hundredths(kept.other()),
                        promises,
                        hundredths(kept.one()),
                        hundredths(kept.error()),
                        Prudent.JUDGING_DRAWS)
                : Words.say("command.pack.risk_none", hundredths(kept.one()), promises, Prudent.JUDGING_DRAWS);
    }

    private static String hundredths(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
