package org.shedboard.screen;

import java.util.List;
import java.util.Optional;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.shop.Visit;

/** Pointing at a machine on the bay board, wherever it is shown, moves the cursor to it in the yard; pointing again opens its sheet. */
final class VisitPointing {
    private final Canvas canvas;
    private final List<String> listed;
    private final int cursor;

    VisitPointing(Canvas canvas, List<Visit> yard, Optional<String> selected) {
        this.canvas = canvas;
        this.listed = yard.stream().map(Visit::id).toList();
        this.cursor = Math.max(0, selected.map(listed::indexOf).orElse(0));
    }

    /** Which row of the yard the cursor is on. */
    int cursor() {
        return cursor;
    }

    void visit(Region at, String visitId) {
        int row = listed.indexOf(visitId);
        if (row >= 0) {
            Press.row(canvas, at, row, cursor);
        }
    }
}
