package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.day.Day;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.shop.Machine;
import org.shedboard.words.Words;

/** What the register says of one machine: titles at the left, what there is to say beside them. */
final class MachineView {
    /** Columns of the titles. */
    private static final int TITLE = 11;
    /** Beyond this width a line is hard to read to its end. */
    private static final int WIDEST = 118;

    private final Canvas canvas;
    private final Board board;
    private final Screen.MachinePage screen;

    /** One line of the page; a title only at the first of its section. */
    private record Row(String title, String text, Style style) {}

    MachineView(Canvas canvas, Board board, Screen.MachinePage screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
    }

    void draw(Region page) {
        Day day = board.expectDay();
        Optional<Machine> machine = day.books().findMachine(screen.machineId());
        if (machine.isEmpty()) {
            Header.draw(canvas, page.row(0), board, Words.say("register.title"));
            canvas.paragraph(page.below(2).inside(1, 0), Words.say("off.machine_gone"), Style.STRONG);
            return;
        }
        String owner = day.books().expectOwner(machine.get().ownerId()).name();
        Header.draw(canvas, page.row(0), board, owner + "   " + machine.get().label());
        Region body = page.below(2).inside(1, 0).left(WIDEST);
        List<Section> sections =
                MachineSections.of(day, board.expectOutlook().at(), machine.get(), board.historyOf(screen.machineId()));
        list(body, rows(sections, body.width()));
    }

    private static List<Row> rows(List<Section> sections, int width) {
        List<Row> rows = new ArrayList<>();
        for (Section section : sections) {
            String title = section.title();
            for (Section.Entry entry : section.entries()) {
                for (String line : TextWidth.wrap(entry.text(), Math.max(1, width - TITLE))) {
                    rows.add(new Row(title, line, entry.style()));
                    title = "";
                }
            }
        }
        return rows;
    }

    /** Moved up no further than until the last line is seen. */
    private void list(Region region, List<Row> rows) {
        int first = Math.max(0, Math.min(screen.scroll(), rows.size() - region.height()));
        for (int row = 0; row < region.height() && first + row < rows.size(); row++) {
            Row each = rows.get(first + row);
            canvas.text(region.row(row).left(TITLE), each.title(), Style.STRONG);
            canvas.text(region.row(row).rightOf(TITLE), each.text(), each.style());
        }
    }
}
