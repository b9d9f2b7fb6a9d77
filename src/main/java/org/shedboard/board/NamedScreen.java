package org.shedboard.board;

import java.util.Optional;
import org.shedboard.shop.Visit;

/** A screen that can be asked for by its name, without the keys that lead to it; its title is {@code picture.NAME} in the bundle. */
public enum NamedScreen {
    BOARD,
    YARD,
    SHEET,
    IN_HAND,
    NEXT,
    CREW,
    TAKE_IN,
    OPENING,
    HOURS,
    HOURS_OF_MACHINES,
    WEEK,
    MONTH,
    HOURS_BY_ROW,
    CLOSING,
    RING,
    SHELF,
    MACHINES,
    MACHINE,
    WHY,
    WHAT_IF,
    MINUTES,
    WEEKS,
    SKILLS,
    SCORECARD,
    SUGGESTIONS,
    HELP,
    FIRST_RUN,
    SET_UP,
    LOADING;

    /** Whether it can be shown of a bay board: some are about the visit that is selected there. */
    public boolean canOpen(Board board) {
        return switch (this) {
            case IN_HAND ->
                Subject.of(board)
                        .flatMap(subject -> Hand.pickUpFirst(subject.outlook(), subject.visit()))
                        .isPresent();
            case SHEET, MACHINE, WHY, MINUTES -> Subject.of(board).isPresent();
            default -> true;
        };
    }

    /**
     * On to it from the bay board, with what has to be read for it.
     *
     * @param personId whose next machine is shown
     */
    public Turn open(Board board, String personId) {
        return switch (this) {
            case BOARD -> Turn.to(board);
            case YARD -> perform(board, Deed.YARD);
            case SHEET -> perform(board, Deed.SHEET);
            case IN_HAND -> perform(board, Deed.MOVE_LATER);
            case NEXT -> Turn.to(board.on(new Screen.Next(personId, Optional.empty())));
            case CREW -> perform(board, Deed.CREW_DAY);
            case TAKE_IN -> Turn.to(board.withFinder().on(new Screen.TakeIn(TakeInForm.EMPTY)));
            case OPENING -> perform(board, Deed.OPEN_DAY);
            case HOURS -> hours(board, Screen.Hours.Page.PEOPLE);
            case HOURS_OF_MACHINES -> hours(board, Screen.Hours.Page.MACHINES);
            case WEEK -> hours(board, Screen.Hours.Page.WEEK);
            case MONTH -> hours(board, Screen.Hours.Page.MONTH);
            case HOURS_BY_ROW -> hours(board, Screen.Hours.Page.ROWS);
            case CLOSING -> perform(board, Deed.GO_OVER_DAY);
            case RING -> perform(board, Deed.WHOM_TO_RING);
            case SHELF -> perform(board, Deed.SHELF);
            case MACHINES -> perform(board, Deed.MACHINES);
            case MACHINE -> perform(board, Deed.MACHINE_PAGE);
            case WHAT_IF -> perform(board, Deed.WHAT_IF);
            case WHY -> perform(board, Deed.WHY_PLANNED);
            case MINUTES -> perform(board, Deed.WHY_SO_LONG);
            case WEEKS -> perform(board, Deed.WEEKS_AHEAD);
            case SKILLS -> Turn.to(board.on(Deeds.ahead(board, Screen.Ahead.Page.SKILLS)));
            case SCORECARD -> perform(board, Deed.SCORECARD);
            case SUGGESTIONS -> perform(board, Deed.SUGGESTIONS);
            case HELP -> perform(board, Deed.HELP);
            case FIRST_RUN -> Turn.to(board.onlyOn(new Screen.FirstRun()));
            case SET_UP -> perform(board, Deed.OWN_SHOP);
            case LOADING -> Turn.to(board.onlyOn(new Screen.Loading()));
        };
    }

    /** The bay board with a visit selected, for the screens that are about one. */
    public static Board select(Board board, Visit visit) {
        return board.with(Screen.Places.START.select(visit.id()));
    }

    private static Turn perform(Board board, Deed deed) {
        return new Deeds(board).perform(deed);
    }

    private static Turn hours(Board board, Screen.Hours.Page page) {
        Screen.Hours hours = new Screen.Hours(page, board.expectDay().date(), 0);
        Board on = board.on(hours);
        return new HoursKeys(on, hours).show(hours);
    }
}
