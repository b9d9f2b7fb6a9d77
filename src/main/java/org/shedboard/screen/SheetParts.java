package org.shedboard.screen;

import java.util.List;
import java.util.Optional;
import org.shedboard.board.PartWords;
import org.shedboard.day.Cover;
import org.shedboard.day.Day;
import org.shedboard.day.Need;
import org.shedboard.day.Needs;
import org.shedboard.day.Outlook;
import org.shedboard.day.SetAside;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.shop.Line;
import org.shedboard.shop.Part;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What a sheet says of parts: which to look for, which are not here, what is renewed rather than cleaned. */
final class SheetParts {
    private final Canvas canvas;
    private final Outlook outlook;
    private final Visit visit;

    SheetParts(Canvas canvas, Outlook outlook, Visit visit) {
        this.canvas = canvas;
        this.outlook = outlook;
        this.visit = visit;
    }

    /** A part with its quantity, and which one where it can be more than one. */
    static String say(Day day, Visit visit, Line line, Part part) {
        Optional<String> item = day.books()
                .catalogue()
                .findWork(line.workId())
                .flatMap(work -> work.findPart(part.name()))
                .filter(wanted ->
                        wanted.itemIdsFor(day.machineOf(visit).classId()).size() > 1)
                .flatMap(wanted -> itemOf(day, visit, part));
        String plain = part.quantity() + " " + part.name();
        return item.map(id -> plain + " (" + day.books().catalogue().nameOfItem(id) + ")")
                .orElse(plain);
    }

    private static Optional<String> itemOf(Day day, Visit visit, Part part) {
        return Needs.of(day, visit).stream()
                .filter(need -> need.part().name().equals(part.name()))
                .findFirst()
                .flatMap(Need::itemId);
    }

    Region draw(Region region) {
        Region rest = region;
        Day day = outlook.day();
        List<Need> needs = Needs.of(day, visit).stream()
                .filter(need -> !need.task().isDone())
                .toList();
        for (Need need : needs) {
            if (need.isOpen()) {
                rest = canvas.paragraph(rest, PartWords.toCheck(day, need), Style.HELD);
            } else if (need.line().isEmpty()) {
                rest = canvas.paragraph(
                        rest, Words.say("part.renew_with", need.part().name()), Style.HELD);
            }
        }
        for (Cover cover : SetAside.of(day, outlook.at()).of(visit)) {
            if (cover.isShort()) {
                rest = canvas.paragraph(rest, PartWords.isShort(day, cover), Style.HELD);
            }
        }
        return rest;
    }
}
