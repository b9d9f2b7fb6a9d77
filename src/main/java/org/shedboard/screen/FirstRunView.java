package org.shedboard.screen;

import java.util.Locale;
import org.shedboard.board.Key;
import org.shedboard.grid.BigLetters;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.words.Words;

/** No shop yet: one's own, or the demonstration. */
final class FirstRunView {
    private FirstRunView() {}

    static void draw(Canvas canvas, Region page) {
        Region body = page.inside(4, 1);
        canvas.big(body.top(BigLetters.ROWS), Words.say("first.title").toUpperCase(Locale.ROOT), Style.STRONG);
        Region rest = canvas.paragraph(body.below(BigLetters.ROWS + 1), Words.say("first.what"), Style.NORMAL)
                .below(1);
        canvas.text(rest.row(0), Words.say("first.own"), Style.STRONG);
        canvas.text(rest.row(2), Words.say("first.demo"), Style.STRONG);
        Press.key(canvas, rest.top(2), Key.of('1'));
        Press.key(canvas, rest.below(2).top(2), Key.of('2'));
        canvas.paragraph(rest.below(4), Words.say("first.caution"), Style.CAUTION);
    }
}
