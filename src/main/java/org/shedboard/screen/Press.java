package org.shedboard.screen;

import java.util.Collections;
import java.util.List;
import org.shedboard.board.Key;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Spot;

/** What pointing at a part of the screen stands for: pressing these keys, and so exactly what they do. */
public record Press(List<Key> keys) implements Spot.Meaning {
    public Press {
        keys = List.copyOf(keys);
    }

    /** Pointing at a region is this key. */
    static void key(Canvas canvas, Region at, Key key) {
        canvas.spot(at, new Press(List.of(key)));
    }

    /** Pointing at a row of a list moves the cursor there; pointing at the row it is on opens it. */
    static void row(Canvas canvas, Region at, int row, int cursor) {
        row(canvas, at, row, cursor, Key.ENTER);
    }

    /** @param again the key for the row that the cursor is on */
    static void row(Canvas canvas, Region at, int row, int cursor, Key again) {
        canvas.spot(at, new Press(row == cursor ? List.of(again) : arrows(row - cursor, Key.UP, Key.DOWN)));
    }

    /** Pointing at a field of a form moves the cursor there. */
    static void field(Canvas canvas, Region at, int field, int cursor) {
        if (field != cursor) {
            canvas.spot(at, new Press(arrows(field - cursor, Key.BACK_TAB, Key.TAB)));
        }
    }

    private static List<Key> arrows(int by, Key back, Key onward) {
        return Collections.nCopies(Math.abs(by), by < 0 ? back : onward);
    }
}
