package org.shedboard.screen;

import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Region;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;
import org.shedboard.words.Words;

/** Draws the board as it is. */
public final class View {
    /** Below this not even one machine and the keys for it can be seen. */
    private static final Size LEAST = new Size(60, 18);

    private View() {}

    public static Grid of(Board board, Size size) {
        Canvas canvas = Canvas.of(size);
        if (size.columns() < LEAST.columns() || size.rows() < LEAST.rows()) {
            canvas.paragraph(size.region(), Words.say("board.too_small", size.columns(), size.rows()), Style.STRONG);
            return canvas.grid();
        }
        Region page = size.region();
        Foot foot = new Foot(board);
        Region above = page.above(foot.rows(page.width()));
        draw(canvas, above, board);
        foot.draw(canvas, page.bottom(foot.rows(page.width())));
        canvas.over();
        board.overlay().ifPresent(overlay -> OverlayView.draw(canvas, above, overlay));
        return canvas.grid();
    }

    private static void draw(Canvas canvas, Region page, Board board) {
        Screen screen = board.screen();
        if (screen instanceof Screen.Loading) {
            canvas.textCentred(page.row(page.height() / 2), Words.say("board.loading"), Style.STRONG);
        } else if (screen instanceof Screen.FirstRun) {
            FirstRunView.draw(canvas, page);
        } else if (screen instanceof Screen.Setup setup) {
            SetupView.draw(canvas, page, setup.form());
        } else if (screen instanceof Screen.Help help) {
            HelpView.draw(canvas, page, help);
        } else {
            drawDay(canvas, page, board);
        }
    }

    private static void drawDay(Canvas canvas, Region page, Board board) {
        Screen screen = board.screen();
        if (screen instanceof Screen.Places places) {
            new PlacesView(canvas, board, places).draw(page);
        } else if (screen instanceof Screen.YardPage yard) {
            new YardView(canvas, board, yard).draw(page);
        } else if (screen instanceof Screen.Crew crew) {
            new CrewView(canvas, board, crew).draw(page);
        } else if (screen instanceof Screen.Sheet sheet) {
            new SheetView(canvas, board, sheet).draw(page);
        } else if (screen instanceof Screen.Next next) {
            NextPairView.draw(canvas, page, board, next);
        } else if (screen instanceof Screen.Hours hours) {
            new HoursView(canvas, board, hours).draw(page);
        } else if (screen instanceof Screen.Closing closing) {
            new ClosingView(canvas, board, closing).draw(page);
        } else if (screen instanceof Screen.Ring ring) {
            new RingView(canvas, board, ring).draw(page);
        } else if (screen instanceof Screen.Suggested suggested) {
            new SuggestView(canvas, board, suggested).draw(page);
        } else if (screen instanceof Screen.Shelf shelf) {
            new ShelfView(canvas, board, shelf).draw(page);
        } else if (screen instanceof Screen.Register register) {
            new RegisterView(canvas, board, register).draw(page);
        } else if (screen instanceof Screen.MachinePage machine) {
            new MachineView(canvas, board, machine).draw(page);
        } else if (screen instanceof Screen.Minutes minutes) {
            new MinutesView(canvas, board, minutes).draw(page);
        } else if (screen instanceof Screen.Ahead ahead) {
            new AheadView(canvas, board, ahead).draw(page);
        } else if (screen instanceof Screen.ScorecardPage scorecard) {
            new ScorecardView(canvas, board, scorecard).draw(page);
        } else if (screen instanceof Screen.TakeIn in) {
            new TakeInView(canvas, board, in.form()).draw(page);
        } else if (screen instanceof Screen.Opening opening) {
            new OpeningView(canvas, board, opening.form()).draw(page);
        } else {
            throw new IllegalArgumentException("nothing draws " + screen);
        }
    }
}
