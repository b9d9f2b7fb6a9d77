package org.shedboard.screen;

import org.shedboard.board.Board;
import org.shedboard.board.Overlay;
import org.shedboard.board.Screen;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Region;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;
import org.shedboard.words.Words;

/** Draws the board as it is. */
public final class View {
    /** Below this a foreman would see too little of the shop to decide anything. */
    private static final Size WHOLE_SHOP = new Size(80, 24);

    /** Below this not even one machine or one person can be shown. */
    private static final Size LEAST = new Size(60, 18);

    private View() {}

    public static Grid of(Board board, Size size) {
        Canvas canvas = Canvas.of(size);
        if (isLess(size, LEAST)) {
            canvas.paragraph(size.region(), Words.say("board.too_small", size.columns(), size.rows()), Style.STRONG);
            return canvas.grid();
        }
        Region page = size.region();
        Foot foot = new Foot(board);
        Region above = page.above(foot.rows(page.width()));
        if (isLess(size, WHOLE_SHOP) && !isSmall(board.screen())) {
            canvas.paragraph(above, Words.say("board.too_small_for_all", size.columns(), size.rows()), Style.STRONG);
        } else {
            draw(canvas, above, board);
        }
        board.overlay().ifPresent(overlay -> ask(canvas, above, overlay));
        foot.draw(canvas, page.bottom(foot.rows(page.width())));
        return canvas.grid();
    }

    private static boolean isLess(Size size, Size than) {
        return size.columns() < than.columns() || size.rows() < than.rows();
    }

    /** Whether the screen is about one person or one machine, or tells the keys. */
    private static boolean isSmall(Screen screen) {
        return screen instanceof Screen.Next
                || screen instanceof Screen.Sheet
                || screen instanceof Screen.Why
                || screen instanceof Screen.Help;
    }

    /** What a question stands on cannot be pointed at. */
    private static void ask(Canvas canvas, Region page, Overlay overlay) {
        canvas.over();
        OverlayView.draw(canvas, page, overlay);
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
        } else if (screen instanceof Screen.InHand held) {
            new HandView(canvas, board, held).draw(page);
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
        } else if (screen instanceof Screen.Trial trial) {
            new TrialView(canvas, board, trial).draw(page);
        } else if (screen instanceof Screen.Why why) {
            new WhyView(canvas, board, why).draw(page);
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
