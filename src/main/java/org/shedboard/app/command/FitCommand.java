package org.shedboard.app.command;

import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Names;
import org.shedboard.day.Need;
import org.shedboard.day.Needs;
import org.shedboard.shop.Visit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** It is said which of the items that a part can be was fitted. */
@Command(name = "fit")
final class FitCommand implements Wish.OnTheDay {
    @Parameters(index = "0", paramLabel = "TAG", descriptionKey = "option.tag")
    private String tag;

    @Parameters(index = "1", paramLabel = "PART", descriptionKey = "option.part")
    private String part;

    @Parameters(index = "2", paramLabel = "ITEM", descriptionKey = "option.item")
    private String item;

    @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.by")
    private Optional<String> by;

    @Override
    public Reply reply(Seen seen) {
        Asked asked = new Asked(seen);
        Visit visit = asked.visit(tag);
        Need need = needOf(seen, visit);
        String who = asked.personIdOr(by);
        Act act = new Act.FitPart(
                visit.id(),
                need.line().orElseThrow().id(),
                need.part().name(),
                asked.item(item).id(),
                who);
        return new Reply.Carry(act, Optional.of(who));
    }

    /** The part of this name that is still open, else the first of this name. */
    private Need needOf(Seen seen, Visit visit) {
        List<Need> named = Needs.of(seen.day(), visit).stream()
                .filter(need -> need.line().isPresent() && need.part().name().equalsIgnoreCase(part))
                .toList();
        return named.stream()
                .filter(Need::isOpen)
                .findFirst()
                .or(() -> named.stream().findFirst())
                .orElseThrow(() -> new CannotDo("part_unknown", part, Names.of(seen.day(), visit)));
    }
}
