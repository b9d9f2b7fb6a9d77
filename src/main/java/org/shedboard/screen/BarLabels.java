package org.shedboard.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;

/**
 * The labels of the bars in one row of a time axis. A label stands in its bar, whole and beside the mark of now; labels for
 * which their bars are too narrow stand one after the other in the free columns behind them.
 */
final class BarLabels {
    /**
     * One bar, and what it may be called, the fullest first.
     *
     * @param isName whether the last of the wordings is a name, which may be cut, and no number
     * @param more what is said besides: in the bar where there is room, else in the free columns behind it; may be empty
     */
    record Bar(Region columns, List<String> wordings, boolean isName, Style style, String more) {
        Bar {
            wordings = List.copyOf(wordings);
        }

        static Bar of(Region columns, List<String> wordings, boolean isName, Style style) {
            return new Bar(columns, wordings, isName, style, "");
        }

        Bar followedBy(String text) {
            return new Bar(columns, wordings, isName, style, text);
        }

        private Bar within(Region narrower) {
            return new Bar(narrower, wordings, isName, style, more);
        }

        /** The last wording, which has to be said. */
        private String name() {
            return wordings.get(wordings.size() - 1);
        }

        private String whole() {
            return more.isEmpty() ? wordings.get(0) : wordings.get(0) + " " + more;
        }
    }

    /** Parts the labels that stand behind their bars. */
    private static final String COMMA = ",";
    /** A name cut shorter than this is none. */
    private static final int LEAST_NAME = 3;

    private final Canvas canvas;
    private final Region row;
    private final Region now;

    /** @param now the cell that marks the present minute; empty where it is not in this row */
    BarLabels(Canvas canvas, Region row, Region now) {
        this.canvas = canvas;
        this.row = row;
        this.now = now;
    }

    /** @param all from left to right; where two share a column it is the later one's */
    void draw(List<Bar> all) {
        List<Waiting> waiting = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Bar bar = all.get(i);
            int next = i + 1 < all.size() ? all.get(i + 1).columns().left() : row.rightEdge();
            Region columns = bar.columns().left(next - bar.columns().left());
            boolean touches = i + 1 < all.size() && columns.rightEdge() == next;
            // what is said besides would seem to be said of the next bar
            Bar shown = touches ? bar.followedBy("") : bar;
            inside(shown.within(columns), touches || !waiting.isEmpty()).ifPresent(each -> addOnce(waiting, each));
            if (!touches) {
                behind(between(columns.rightEdge(), next), waiting);
                waiting.clear();
            }
        }
    }

    /** Bars of one machine side by side are named once. */
    private static void addOnce(List<Waiting> waiting, Waiting next) {
        if (!waiting.contains(next)) {
            waiting.add(next);
        }
    }

    /** What is still to be said of a bar, and whether that is how it is called. */
    private record Waiting(String text, Style style, boolean isCalledSo) {}

    /**
     * Labels a bar; gives what it has no room for.
     *
     * @param isFollowed whether another label may stand just behind it
     */
    private Optional<Waiting> inside(Bar bar, boolean isFollowed) {
        if (!bar.more().isEmpty() && fits(bar.whole(), bar, true)) {
            canvas.text(room(bar, bar.whole()), bar.whole(), bar.style());
            return Optional.empty();
        }
        Optional<String> fitting = bar.wordings().stream()
                .filter(text -> fits(text, bar, isFollowed || bar.isName()))
                .findFirst();
        Region cut = room(bar, bar.name()).leftOf(1);
        if (fitting.isEmpty() && (!bar.isName() || cut.width() < LEAST_NAME)) {
            String text = bar.isName() ? TextWidth.clip(bar.name(), LEAST_NAME) : bar.name();
            return Optional.of(new Waiting(text, bar.style(), true));
        }
        String text = fitting.orElse(bar.name());
        canvas.text(fitting.isEmpty() ? cut : room(bar, text), text, bar.style());
        return bar.more().isEmpty() ? Optional.empty() : Optional.of(new Waiting(bar.more(), bar.style(), false));
    }

    /** A number may fill its bar where no other one follows at once; else a glyph of the bar has to be seen behind it. */
    private boolean fits(String text, Bar bar, boolean needsGlyph) {
        int spare = room(bar, text).width() - TextWidth.of(text);
        return spare > 0 || spare == 0 && !needsGlyph;
    }

    /** The bar, from behind now where the label would stand over it. */
    private Region room(Bar bar, String text) {
        boolean hidesNow =
                !now.intersect(bar.columns().left(TextWidth.of(text))).isEmpty();
        return hidesNow ? bar.columns().rightOf(now.left() + 1 - bar.columns().left()) : bar.columns();
    }

    /** As many as fit, the first first; now is not written over. */
    private void behind(Region gap, List<Waiting> waiting) {
        Region room =
                !now.isEmpty() && gap.contains(now.left(), now.top()) ? between(now.left() + 1, gap.rightEdge()) : gap;
        boolean first = true;
        for (Waiting each : waiting) {
            String text = (first || !each.isCalledSo() ? "" : COMMA) + each.text();
            if (TextWidth.of(text) > room.width()) {
                return;
            }
            room = canvas.text(room, text, each.style());
            first = false;
        }
    }

    private Region between(int left, int right) {
        return new Region(left, row.top(), right - left, 1);
    }
}
