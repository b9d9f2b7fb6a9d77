package org.shedboard.app.command;

import org.shedboard.day.WhySoLong;
import org.shedboard.shop.Visit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Where the minutes of a visit come from. */
@Command(name = "estimate")
final class EstimateCommand implements Wish.OnTheDay {
    @Parameters(index = "0", paramLabel = "TAG", descriptionKey = "option.tag")
    private String tag;

    @Override
    public Reply reply(Seen seen) {
        Visit visit = new Asked(seen).visit(tag);
        return new Reply.Tell(new EstimateAnswer(seen.day(), WhySoLong.of(seen.day(), visit)).answer());
    }
}
