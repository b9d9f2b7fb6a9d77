package org.shedboard.app.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.board.PartWords;
import org.shedboard.day.Cover;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.Pick;
import org.shedboard.words.Words;

/** A pick list, said: bin by bin, each item with its machine, what to look for on it, and what is short. */
final class PickAnswer {
    private final Day day;
    private final LocalDate date;
    private final List<Pick> picks;

    private PickAnswer(Seen seen, LocalDate date) {
        this.day = seen.day();
        this.date = date;
        this.picks = Pick.of(seen.outlook(), date);
    }

    static Answer of(Seen seen, LocalDate date) {
        PickAnswer answer = new PickAnswer(seen, date);
        Tree tree = new Tree()
                .put("date", date.toString())
                .put("picks", answer.picks.stream().map(answer::tree).toList());
        return new Answer(answer.lines(), tree.fields());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say(picks.isEmpty() ? "pick.nothing" : "pick.title", date));
        Map<String, List<Pick>> byBin =
                picks.stream().collect(Collectors.groupingBy(Pick::bin, LinkedHashMap::new, Collectors.toList()));
        byBin.forEach((bin, own) -> {
            lines.add("");
            lines.add(bin.isEmpty() ? Words.say("pick.no_bin") : Words.say("pick.bin", bin));
            own.forEach(pick -> addTo(lines, pick));
        });
        return lines;
    }

    private void addTo(List<String> lines, Pick pick) {
        lines.add("  " + line(pick));
        remark(pick).ifPresent(remark -> lines.add("      " + remark));
    }

    private String line(Pick pick) {
        return Words.say(
                "pick.line",
                pick.need().isOpen() ? "?" : " ",
                PartWords.amount(pick.item(), pick.need().amount()),
                pick.item().name(),
                Names.of(day, pick.need().visit()));
    }

    /** What is short, else what somebody has to look for. */
    private Optional<String> remark(Pick pick) {
        if (pick.cover().isShort()) {
            return Optional.of(Words.say("pick.short", PartWords.isShort(day, pick.cover())));
        }
        return pick.need().isOpen() ? Optional.of(PartWords.toCheck(day, pick.need())) : Optional.empty();
    }

    private Map<String, Object> tree(Pick pick) {
        Cover cover = pick.cover();
        return new Tree()
                .put("bin", pick.bin())
                .put("item", pick.item().id())
                .put("name", pick.item().name())
                .put("amount", pick.need().amount().toString())
                .put("visit", pick.need().visit().id())
                .put("tag", pick.need().visit().tag())
                .put("owner", day.ownerOf(pick.need().visit()).name())
                .put("state", cover.state())
                .put("short", cover.missing().toString())
                .put("hereFrom", pick.hereFrom().map(at -> Tree.time(day, at)))
                .put("check", pick.need().isOpen() ? PartWords.toCheck(day, pick.need()) : "")
                .fields();
    }
}
