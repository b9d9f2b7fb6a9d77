package org.shedboard.screen;

import java.util.List;
import java.util.Optional;
import org.shedboard.board.Board;
import org.shedboard.board.NumberWords;
import org.shedboard.board.RegisterKeys;
import org.shedboard.board.Screen;
import org.shedboard.day.Day;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.register.Finder;
import org.shedboard.register.Grade;
import org.shedboard.shop.Machine;
import org.shedboard.words.Words;

/** Machines and their owners, found as somebody types. */
final class RegisterView {
    /** Columns of the word before the field. */
    private static final int LABEL = 6;

    private static final int FIELD = 40;
    private static final List<Column> COLUMNS = List.of(
            Column.left("", 1), Column.left("", 26), Column.left("", 22), Column.right("", 4), Column.left("", 0));

    private final Canvas canvas;
    private final Board board;
    private final Screen.Register screen;

    RegisterView(Canvas canvas, Board board, Screen.Register screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, Words.say("register.title"));
        Region body = page.below(2).inside(1, 0);
        canvas.text(body.row(0).left(LABEL), Words.say("register.find"), Style.STRONG);
        OverlayView.field(canvas, body.row(0).rightOf(LABEL).left(FIELD), screen.find(), true);
        List<Finder.Hit> hits = RegisterKeys.listed(board, screen);
        canvas.text(body.row(0).rightOf(LABEL + FIELD + 2), Words.say("register.count", hits.size()), Style.QUIET);
        if (hits.isEmpty()) {
            canvas.text(body.row(2), Words.say("register.nothing"), Style.QUIET);
        }
        list(body.below(2), hits);
    }

    private void list(Region region, List<Finder.Hit> hits) {
        int first = Math.max(0, screen.row() - region.height() + 1);
        for (int row = 0; row < region.height() && first + row < hits.size(); row++) {
            hit(region.row(row), hits.get(first + row), first + row == screen.row());
            Press.row(canvas, region.row(row), first + row, screen.row());
        }
    }

    private void hit(Region row, Finder.Hit hit, boolean chosen) {
        Style style = chosen ? Style.SELECTED : hit.grade() == Grade.FORGIVEN ? Style.QUIET : Style.NORMAL;
        Optional<Machine> machine = hit.machine();
        List<String> texts = List.of(
                chosen ? String.valueOf(Glyphs.POINTER) : "",
                hit.owner().name(),
                machine.map(Machine::label).orElse(Words.say("register.no_machine")),
                machine.map(RegisterView::year).orElse(""),
                machine.map(this::about).orElse(hit.owner().phone()));
        canvas.fill(row, style);
        canvas.entry(row, COLUMNS, texts, style);
    }

    private static String year(Machine machine) {
        return machine.modelYear().isPresent()
                ? String.valueOf(machine.modelYear().getAsInt())
                : "";
    }

    /** The number, marked where it fails, and the key tag of one that is here. */
    private String about(Machine machine) {
        Day day = board.expectDay();
        String tag = day.visits().stream()
                .filter(visit -> visit.machineId().equals(machine.id()))
                .flatMapToInt(visit -> visit.tag().stream())
                .mapToObj(number -> Words.say("machine.tag", number) + "  ")
                .findFirst()
                .orElse("");
        String mark = NumberWords.mark(machine.number()).isPresent() ? " !" : "";
        return tag + machine.number() + mark;
    }
}
