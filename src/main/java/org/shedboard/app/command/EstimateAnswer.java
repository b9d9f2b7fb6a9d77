package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.board.MinuteWords;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.WhySoLong;
import org.shedboard.forecast.Explanation;
import org.shedboard.forecast.FinishedVisit;
import org.shedboard.forecast.MudAndDepth;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.words.Words;

/** Where the minutes of one visit come from, said. */
final class EstimateAnswer {
    private final Day day;
    private final WhySoLong why;
    private final Explanation explained;

    EstimateAnswer(Day day, WhySoLong why) {
        this.day = day;
        this.why = why;
        this.explained = why.explained();
    }

    Answer answer() {
        return new Answer(lines(), tree());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say("estimate.title", Names.of(day, why.visit())));
        lines.add(MinuteWords.toOwner(why));
        if (explained.table().isEmpty()) {
            lines.add(Words.say("estimate.unknown"));
        }
        MinuteWords.parts(why).forEach(part -> lines.add(minutes(MinuteWords.minutes(part), Words.say(part.source()))));
        lines.add(minutes(String.valueOf(explained.range().likely()), Words.say("estimate.likely")));
        lines.add(Words.say("estimate.works"));
        explained.works().forEach(work -> lines.add("  " + work(work)));
        explained.table().ifPresent(table -> {
            lines.add(Words.say("estimate.table"));
            Stream.of(Mud.values()).forEach(mud -> lines.add("  " + row(table, mud)));
        });
        lines.add(Words.say(why.nearest().isEmpty() ? "estimate.none_finished" : "estimate.nearest"));
        why.nearest().forEach(like -> lines.add("  " + like(like)));
        return lines;
    }

    private static String minutes(String minutes, String what) {
        return "%7s  %s".formatted(minutes, what);
    }

    private static String work(Explanation.PieceOfWork work) {
        return Words.say("estimate.work", MinuteWords.name(work), work.catalogue(), work.likely(), work.safe());
    }

    private String row(MudAndDepth table, Mud mud) {
        String cells = Stream.of(Depth.values())
                .map(depth -> Words.say("estimate.cell", Words.say(depth), cell(table, mud, depth)))
                .collect(Collectors.joining(", "));
        return Words.say("estimate.table_row", Words.say(mud), cells);
    }

    private String cell(MudAndDepth table, Mud mud, Depth depth) {
        int minutes = table.likely(mud, depth);
        return isOwn(mud, depth) ? Words.say("estimate.own", minutes) : String.valueOf(minutes);
    }

    private boolean isOwn(Mud mud, Depth depth) {
        Intake intake = why.visit().intake();
        return mud == intake.mud() && depth == intake.depth();
    }

    private String like(WhySoLong.Like like) {
        FinishedVisit visit = like.visit();
        return Words.say(
                "estimate.like",
                MinuteWords.date(visit),
                MinuteWords.machine(day, like),
                Words.say(visit.under().mud()),
                Words.say(visit.under().depth()),
                Math.round(visit.catalogueMinutes()),
                Math.round(visit.actualMinutes()));
    }

    private Map<String, Object> tree() {
        return new Tree()
                .put("visit", why.visit().id())
                .put("name", Names.of(day, why.visit()))
                .put("mud", why.visit().intake().mud())
                .put("depth", why.visit().intake().depth())
                .put("likely", explained.range().likely())
                .put("safe", explained.range().safe())
                .put("catalogueAtPace", explained.catalogueAtPace())
                .put("leftLikely", why.left().likely())
                .put("leftSafe", why.left().safe())
                .put("sentence", MinuteWords.toOwner(why))
                .put(
                        "parts",
                        explained.parts().stream().map(EstimateAnswer::tree).toList())
                .put(
                        "works",
                        explained.works().stream().map(EstimateAnswer::tree).toList())
                .put("byMudAndDepth", explained.table().map(this::tree))
                .put("washed", washed())
                .put("nearest", why.nearest().stream().map(this::tree).toList())
                .fields();
    }

    private static Map<String, Object> tree(Explanation.Part part) {
        return new Tree()
                .put("source", part.source())
                .put("minutes", part.minutes())
                .fields();
    }

    private static Map<String, Object> tree(Explanation.PieceOfWork work) {
        return new Tree()
                .put("step", work.step())
                .put("sort", work.sort())
                .put("catalogue", work.catalogue())
                .put("likely", work.likely())
                .put("safe", work.safe())
                .fields();
    }

    private List<Map<String, Object>> tree(MudAndDepth table) {
        List<Map<String, Object>> cells = new ArrayList<>();
        for (Mud mud : Mud.values()) {
            for (Depth depth : Depth.values()) {
                cells.add(new Tree()
                        .put("mud", mud)
                        .put("depth", depth)
                        .put("likely", table.likely(mud, depth))
                        .put("isOwn", isOwn(mud, depth))
                        .fields());
            }
        }
        return cells;
    }

    private Optional<Map<String, Object>> washed() {
        return why.washed()
                .map(washed -> new Tree()
                        .put("likely", washed.likely())
                        .put("savedMinutes", washed.savedMinutes())
                        .put("savedChargeableMinutes", washed.savedChargeable())
                        .fields());
    }

    private Map<String, Object> tree(WhySoLong.Like like) {
        FinishedVisit visit = like.visit();
        return new Tree()
                .put("visit", visit.visitId())
                .put("machine", like.machine().map(Machine::id))
                .put("name", MinuteWords.machine(day, like))
                .put("class", visit.under().classId())
                .put("date", visit.under().date().toString())
                .put("mud", visit.under().mud())
                .put("depth", visit.under().depth())
                .put("catalogue", Math.round(visit.catalogueMinutes()))
                .put("took", Math.round(visit.actualMinutes()))
                .fields();
    }
}
