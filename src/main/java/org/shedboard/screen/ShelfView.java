package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shedboard.board.Board;
import org.shedboard.board.PartWords;
import org.shedboard.board.Screen;
import org.shedboard.board.ShelfKeys;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.ShelfRow;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.register.Order;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;
import org.shedboard.words.Words;

/** The shelf: what lies where, what the plan uses of it, what is short and what is on order. */
final class ShelfView {
    /** Beyond this width the eye would lose the line between an item and its order. */
    private static final int WIDEST = 118;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Shelf screen;
    private final Day day;

    ShelfView(Canvas canvas, Board board, Screen.Shelf screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
        this.day = board.expectDay();
    }

    void draw(Region page) {
        List<ShelfRow> rows = ShelfKeys.rows(board);
        Header.draw(canvas, page.row(0), board, Words.say("shelf.title"));
        Region body = page.below(2).left(WIDEST);
        if (rows.isEmpty()) {
            canvas.paragraph(body.inside(1, 0), Words.say("shelf.no_items"), Style.NORMAL);
            return;
        }
        canvas.headings(body.row(0).inside(1, 0), columns());
        Region rest = body.below(1);
        int first = Math.max(0, Math.min(screen.row() - rest.height() + 1, rows.size() - 1));
        for (int i = first; i < rows.size() && i - first < rest.height(); i++) {
            row(rest.row(i - first), rows.get(i), i == screen.row());
            Press.row(canvas, rest.row(i - first), i, screen.row());
        }
    }

    private static List<Column> columns() {
        return List.of(
                Column.left(Words.say("shelf.item"), 0),
                Column.left(Words.say("shelf.bin"), 9),
                Column.right(Words.say("shelf.there"), 8),
                Column.right(Words.say("shelf.today"), 5),
                Column.right(Words.say("shelf.tomorrow"), 8),
                Column.right(Words.say("shelf.short"), 6),
                Column.left(Words.say("shelf.on_order"), 13));
    }

    private void row(Region region, ShelfRow row, boolean chosen) {
        Style style = chosen ? Style.SELECTED : styleOf(row);
        if (chosen) {
            canvas.fill(region, style);
            canvas.fill(region.left(1), Glyphs.POINTER, style);
        }
        canvas.entry(region.inside(1, 0), columns(), texts(row), style);
    }

    private static Style styleOf(ShelfRow row) {
        if (row.notOrdered().isPositive()) {
            return Style.DANGER;
        }
        if (row.missing().isPositive()) {
            return Style.HELD;
        }
        return row.stock().isEmpty() ? Style.QUIET : Style.NORMAL;
    }

    private List<String> texts(ShelfRow row) {
        List<String> texts = new ArrayList<>();
        texts.add(row.item().name());
        texts.add(row.stock().map(Stock::bin).orElse(""));
        texts.add(row.stock()
                .map(stock -> PartWords.amount(row.item(), stock.amount()))
                .orElse(Words.say("shelf.not_counted")));
        texts.add(used(row.today()));
        texts.add(used(row.tomorrow()));
        texts.add(used(row.missing()));
        texts.add(row.orders().stream().map(this::order).collect(Collectors.joining(", ")));
        return texts;
    }

    /** Nothing is not worth a figure. */
    private static String used(Amount amount) {
        return amount.isPositive() ? amount.toString() : "";
    }

    private String order(Order order) {
        return Words.say("shelf.order", order.amount(), Clocks.sayTime(day, order.due()));
    }
}
