package org.shedboard.app.command;

import org.shedboard.learn.Scorecard;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How right what was said of the last finished work was. */
@Command(name = "scorecard")
final class ScorecardCommand implements Wish.OnTheDay {
    private static final int MOST = 100_000;

    @Option(names = "--last", paramLabel = "N", defaultValue = "" + Scorecard.USUAL)
    private int last;

    @Override
    public Reply reply(Seen seen) {
        if (last < 1 || last > MOST) {
            throw new WrongUse("command.scorecard_last", last, MOST);
        }
        return new Reply.Tell(ScorecardAnswer.of(
                seen.day().books(), seen.day().books().experience().scorecard(last), last));
    }
}
