package org.shedboard.board;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Overlay.Purpose;
import org.shedboard.day.Act;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Person;
import org.shedboard.tally.HoursRow;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.Words;

/** What keys do while the hours are looked at. */
final class HoursKeys {
    private static final int MOST_LINES = 200;

    private final Board board;
    private final Screen.Hours screen;

    HoursKeys(Board board, Screen.Hours screen) {
        this.board = board;
        this.screen = screen;
    }

    Turn perform(Deed deed) {
        return switch (deed) {
            case HOURS_OF_PEOPLE -> show(screen.on(Screen.Hours.Page.PEOPLE));
            case HOURS_OF_MACHINES -> show(screen.on(Screen.Hours.Page.MACHINES));
            case HOURS_OF_WEEK -> show(screen.on(Screen.Hours.Page.WEEK));
            case HOURS_BY_ROW -> show(screen.on(Screen.Hours.Page.ROWS));
            case LOOK_BACK -> show(screen.on(Screen.Hours.Page.MONTH));
            case EARLIER -> show(screen.moved(-1));
            case LATER -> show(screen.moved(1));
            case PUT_RIGHT -> rightTimes(chosen(board, screen).orElseThrow());
            case STRIKE_OUT -> strikeOut(chosen(board, screen).orElseThrow());
            case CLOSE_DAY -> Turn.to(board.asking(whoClosesIt()));
            case ADD_HOURS -> Turn.to(board.asking(whose()));
            default -> throw new IllegalStateException(deed + " is no key of this screen");
        };
    }

    /** The last row that can be chosen; of other pages, as far down as lines are moved up at all. */
    static int lastRow(Board board, Screen.Hours screen) {
        return screen.page() == Screen.Hours.Page.ROWS
                ? board.hoursOf(screen).map(HoursRow::of).map(List::size).orElse(1) - 1
                : MOST_LINES;
    }

    /** Whether a day before today is shown that was opened and never closed. */
    static boolean isUnclosed(Board board, Screen.Hours screen) {
        return !screen.until().isAfter(screen.from().plusDays(1))
                && screen.date().isBefore(board.expectDay().date())
                && board.hoursOf(screen)
                        .filter(tally -> tally.ledger().hasUnclosed())
                        .isPresent();
    }

    /** A day that nobody closed is closed afterwards, once everybody's hours are put right. */
    private Overlay whoClosesIt() {
        ChoiceList choices = new ChoiceList();
        for (Person person : board.expectDay().shop().people()) {
            choices.add(
                    person.name(),
                    Optional.empty(),
                    new Overlay.Reply.CarryOn(new Act.CloseDay(person.id()), screen.date()));
        }
        return choices.titled(Words.say("ask.who_closes"));
    }

    /** What has happened today is at hand; everything else is read. */
    Turn show(Screen.Hours next) {
        LocalDate today = board.expectDay().date();
        Board shown = board.with(next);
        if (next.page() == Screen.Hours.Page.MONTH) {
            return Turn.to(shown, new Effect.LookBack(next.from(), next.until()));
        }
        boolean isToday = next.from().equals(today) && next.until().equals(today.plusDays(1));
        return isToday ? Turn.to(shown) : Turn.to(shown, new Effect.ReadHours(next.from(), next.until()));
    }

    /** The row that the keys of the page of rows are about; one that was struck out can not be put right. */
    static Optional<ClockEntry> chosen(Board board, Screen.Hours screen) {
        List<HoursRow> rows = board.hoursOf(screen).map(HoursRow::of).orElse(List.of());
        return screen.page() == Screen.Hours.Page.ROWS && screen.scroll() < rows.size()
                ? Optional.of(rows.get(screen.scroll()))
                        .filter(HoursRow::counts)
                        .map(HoursRow::entry)
                : Optional.empty();
    }

    private Turn rightTimes(ClockEntry old) {
        ZoneId zone = board.expectDay().zone();
        Instant end = old.to().orElse(board.expectOutlook().at());
        String typed = ClockTyping.typed(old.from(), end, zone);
        Purpose purpose = new Purpose.RightTimes(Optional.of(old.id()), old.personId(), old.activity(), screen.date());
        return Turn.to(board.asking(new Overlay.TypeIn(
                Words.say("ask.right_times", name(old.personId()), what(old)), Typing.of(typed), purpose)));
    }

    private String what(ClockEntry entry) {
        return board.hoursOf(screen).map(tally -> TallyWords.on(tally, entry)).orElse("");
    }

    private String name(String personId) {
        return board.expectDay().nameOf(personId);
    }

    private Turn strikeOut(ClockEntry old) {
        Act.Correct act = new Act.Correct(board.who(), Optional.of(old.id()), Optional.empty(), "");
        return Turn.to(board.asking(new Overlay.TypeIn(
                Words.say("ask.why_struck", name(old.personId()), what(old)),
                Typing.EMPTY,
                new Purpose.RightWhy(act, screen.date()))));
    }

    private Overlay whose() {
        ChoiceList choices = new ChoiceList();
        for (Person person : board.expectDay().shop().people()) {
            choices.ask(person.name(), what(person));
        }
        return choices.titled(Words.say("ask.whose_hours"));
    }

    private Overlay what(Person person) {
        ChoiceList choices = new ChoiceList();
        choices.ask(Words.say("tally.at_work"), times(person, new Activity.AtWork(), Words.say("tally.at_work")));
        for (Activity.OtherWork.Kind kind : Activity.OtherWork.Kind.values()) {
            String name = Words.say("otherWork." + kind);
            choices.ask(name, times(person, new Activity.OtherWork(kind), name));
        }
        for (Activity.Break.Kind kind : Activity.Break.Kind.values()) {
            String name = Words.say("break." + kind);
            choices.ask(name, times(person, new Activity.Break(kind), name));
        }
        board.hoursOf(screen)
                .ifPresent(tally -> tally.visits().forEach(visit -> {
                    Activity.OnStay on = new Activity.OnStay(
                            visit.visit().id(), visit.visit().newestStay().step());
                    String name = TallyWords.on(tally, on);
                    choices.ask(name, times(person, on, name));
                }));
        return choices.titled(Words.say("ask.what_hours", person.name()));
    }

    private Overlay times(Person person, Activity activity, String what) {
        return new Overlay.TypeIn(
                Words.say("ask.right_times", person.name(), what),
                Typing.EMPTY,
                new Purpose.RightTimes(Optional.empty(), person.id(), activity, screen.date()));
    }
}
