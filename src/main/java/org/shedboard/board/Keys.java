package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Acts;
import org.shedboard.day.Day;
import org.shedboard.day.Need;
import org.shedboard.day.NextTask;
import org.shedboard.day.Outcome;
import org.shedboard.day.Outlook;
import org.shedboard.day.ShelfRow;
import org.shedboard.hours.Activity;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Person;
import org.shedboard.shop.Task;
import org.shedboard.shop.VisitState;
import org.shedboard.tally.ClosingItem;
import org.shedboard.words.Words;

/** Which keys do what on each screen. The foot of the screen, the help and the update all read this list. */
public final class Keys {
    private Keys() {}

    /** The keys of the screen now shown, the most used first; those that change something are off where one only looks. */
    public static List<Binding> of(Board board) {
        List<Binding> keys = ofScreen(board);
        return board.looksOnly() ? keys.stream().map(Binding::toLookOnly).toList() : keys;
    }

    private static List<Binding> ofScreen(Board board) {
        Screen screen = board.screen();
        if (screen instanceof Screen.Places) {
            return places(board);
        }
        if (screen instanceof Screen.InHand held) {
            return HandKeys.inHand(board, held);
        }
        if (screen instanceof Screen.Crew) {
            return CrewKeys.of(board);
        }
        if (screen instanceof Screen.YardPage yard) {
            return YardKeys.of(board, yard, visitKeys(Subject.of(board)));
        }
        if (screen instanceof Screen.Sheet) {
            return sheet(board);
        }
        if (screen instanceof Screen.Next next) {
            return next(board, next);
        }
        if (screen instanceof Screen.Hours hours) {
            return hours(board, hours);
        }
        if (screen instanceof Screen.Closing closing) {
            return closing(board, closing);
        }
        if (screen instanceof Screen.Ring ring) {
            return ring(ring);
        }
        if (screen instanceof Screen.Suggested suggested) {
            return suggested(suggested);
        }
        if (screen instanceof Screen.Shelf shelf) {
            return shelf(board, shelf);
        }
        if (screen instanceof Screen.MachinePage page) {
            return machinePage(board, page);
        }
        if (screen instanceof Screen.Ahead) {
            return List.of(
                    Binding.on('p', Deed.AHEAD_PLACES),
                    Binding.on('s', Deed.AHEAD_SKILLS),
                    Binding.on(Key.UP, Deed.UP),
                    Binding.on(Key.DOWN, Deed.DOWN),
                    Binding.on('?', Deed.HELP),
                    Binding.on(Key.ESCAPE, Deed.BACK));
        }
        if (screen instanceof Screen.Trial trial) {
            return TrialKeys.of(board, trial);
        }
        if (screen instanceof Screen.Why) {
            return WhyKeys.of();
        }
        if (screen instanceof Screen.Minutes) {
            return List.of(
                    Binding.on(Key.UP, Deed.UP),
                    Binding.on(Key.DOWN, Deed.DOWN),
                    Binding.on('?', Deed.HELP),
                    Binding.on(Key.ESCAPE, Deed.BACK));
        }
        if (screen instanceof Screen.ScorecardPage) {
            return List.of(
                    Binding.on('w', Deed.SCORE_SAID),
                    Binding.on('p', Deed.SCORE_DRAWN),
                    Binding.on('a', Deed.SCORE_ASIDE),
                    Binding.on('s', Deed.SUGGESTIONS),
                    Binding.on(Key.UP, Deed.UP),
                    Binding.on(Key.DOWN, Deed.DOWN),
                    Binding.on('?', Deed.HELP),
                    Binding.on(Key.ESCAPE, Deed.BACK));
        }
        if (screen instanceof Screen.FirstRun) {
            return List.of(
                    Binding.on('1', Deed.OWN_SHOP), Binding.on('2', Deed.DEMONSTRATION), Binding.on('q', Deed.QUIT));
        }
        if (screen instanceof Screen.Opening) {
            return List.of(
                    Binding.on(Key.UP, Deed.UP),
                    Binding.on(Key.DOWN, Deed.DOWN),
                    Binding.on(' ', Deed.TOGGLE),
                    Binding.on('u', Deed.SET_UNTIL),
                    Binding.on(Key.ENTER, Deed.CONFIRM),
                    Binding.on(Key.ESCAPE, Deed.BACK));
        }
        if (screen instanceof Screen.Help) {
            return List.of(
                    Binding.on(Key.UP, Deed.UP), Binding.on(Key.DOWN, Deed.DOWN), Binding.on(Key.ESCAPE, Deed.BACK));
        }
        return List.of(Binding.on(Key.ESCAPE, Deed.BACK));
    }

    private static List<Binding> places(Board board) {
        List<Binding> keys = new ArrayList<>();
        Optional<Subject> subject = Subject.of(board);
        Day day = board.expectDay();
        keys.add(Binding.on('t', Deed.TAKE_IN));
        keys.add(Binding.when(!day.isOpened(), 'o', Deed.OPEN_DAY, "off.is_open"));
        keys.add(Binding.when(subject.isPresent(), Key.ENTER, Deed.SHEET, "off.nothing_selected"));
        keys.add(Binding.on('n', Deed.NEXT));
        String noOffer = day.isClosed() ? "off.day_closed" : "off.no_better";
        keys.add(Binding.when(board.better().isPresent() && !day.isClosed(), 'b', Deed.OFFER, noOffer));
        keys.addAll(visitKeys(subject));
        keys.add(Binding.when(isRunning(day), 'w', Deed.CREW, whyNotRunning(day)));
        keys.add(Binding.when(isRunning(day), 'k', Deed.CHECK_HOIST, whyNotRunning(day)));
        keys.add(Binding.on('l', Deed.TALLY));
        keys.add(Binding.on('d', Deed.WHOM_TO_RING));
        keys.add(Binding.on('e', Deed.SHELF));
        keys.add(Binding.on('m', Deed.MACHINES));
        keys.add(Binding.on('v', Deed.WEEKS_AHEAD));
        keys.add(Binding.when(subject.isPresent(), 'y', Deed.WHY_PLANNED, "off.nothing_selected"));
        keys.add(Binding.when(isRunning(day), '=', Deed.WHAT_IF, whyNotRunning(day)));
        keys.add(Binding.on('j', Deed.SCORECARD));
        keys.add(TakeBackKeys.binding(board));
        keys.addAll(HandKeys.pickUp(board));
        keys.add(Binding.on(Key.TAB, Deed.YARD));
        keys.add(Binding.on(Key.BACK_TAB, Deed.CREW_DAY));
        keys.addAll(SightKeys.of(board));
        keys.add(Binding.on(Key.UP, Deed.UP));
        keys.add(Binding.on(Key.DOWN, Deed.DOWN));
        keys.add(Binding.on('?', Deed.HELP));
        keys.add(Binding.on('q', Deed.QUIT));
        return keys;
    }

    private static List<Binding> sheet(Board board) {
        Optional<Subject> subject = Subject.of(board);
        List<Binding> keys = new ArrayList<>(visitKeys(subject));
        if (openOnSheet(board).isPresent()) {
            keys.add(0, Binding.on('e', Deed.FIT_PART));
        }
        keys.add(ours(subject));
        boolean isOpenFix = subject.filter(
                        each -> !Fixes.open(each.outlook().day(), each.visit()).isEmpty())
                .isPresent();
        keys.add(Binding.when(isOpenFix, 'o', Deed.ASK_OWNER, "off.no_fix_open"));
        keys.add(Binding.on('w', Deed.REPORT));
        keys.add(Binding.on(Key.PAGE_DOWN, Deed.FURTHER_DOWN));
        keys.add(Binding.on(Key.PAGE_UP, Deed.FURTHER_UP));
        keys.add(Binding.on('n', Deed.NEXT));
        keys.add(Binding.on('m', Deed.MACHINE_PAGE));
        keys.add(TakeBackKeys.binding(board));
        keys.add(Binding.on('y', Deed.WHY_PLANNED));
        boolean running = isRunning(board.expectDay());
        keys.add(Binding.when(running, '=', Deed.WHAT_IF, whyNotRunning(board.expectDay())));
        keys.add(Binding.on(Key.ESCAPE, Deed.BACK));
        keys.add(Binding.on(Key.UP, Deed.UP));
        keys.add(Binding.on(Key.DOWN, Deed.DOWN));
        keys.add(Binding.on('?', Deed.HELP));
        return keys;
    }

    /** The part of which it is to be said which was fitted: one of the task the cursor is on, else any of the machine's. */
    static Optional<Need> openOnSheet(Board board) {
        return Subject.of(board)
                .flatMap(subject -> ShelfKeys.openNeed(board.expectDay(), subject.visit(), subject.picked())
                        .or(() -> ShelfKeys.openNeed(board.expectDay(), subject.visit(), Optional.empty())));
    }

    private static List<Binding> shelf(Board board, Screen.Shelf screen) {
        Optional<ShelfRow> row = ShelfKeys.chosen(board, screen);
        boolean waited = row.filter(each -> !each.orders().isEmpty()).isPresent();
        boolean counted = row.filter(each -> each.stock().isPresent()).isPresent();
        return List.of(
                Binding.when(row.isPresent(), 'c', Deed.COUNT, "off.no_item"),
                Binding.when(counted, 'o', Deed.ORDER, row.isPresent() ? "off.not_counted" : "off.no_item"),
                Binding.when(waited, 'h', Deed.HAS_COME, row.isPresent() ? "off.nothing_ordered" : "off.no_item"),
                Binding.on(Key.UP, Deed.UP),
                Binding.on(Key.DOWN, Deed.DOWN),
                Binding.on('?', Deed.HELP),
                Binding.on(Key.ESCAPE, Deed.BACK));
    }

    /** A machine of ours goes with the owner, or comes back. */
    private static Binding ours(Optional<Subject> subject) {
        boolean isOut = subject.flatMap(each -> LoanKeys.outFor(each)).isPresent();
        boolean canGo = subject.filter(each ->
                        each.visit().state().isOpen() || each.visit().state().isHere())
                .isPresent();
        return isOut ? Binding.on('l', Deed.OURS_BACK) : Binding.when(canGo, 'l', Deed.LEND_OURS, "off.wrong_state");
    }

    private static List<Binding> visitKeys(Optional<Subject> subject) {
        boolean any = subject.isPresent();
        VisitState state = subject.map(each -> each.visit().state()).orElse(VisitState.GONE);
        boolean closed = subject.map(each -> each.outlook().day().isClosed()).orElse(false);
        boolean inWork = !closed && (state == VisitState.IN_YARD || state == VisitState.IN_HAND);
        boolean running = subject.flatMap(Subject::running).isPresent();
        String why = any ? "off.wrong_state" : "off.nothing_selected";
        return List.of(
                Binding.when(inWork && subject.flatMap(Subject::toStart).isPresent(), 's', Deed.START, why),
                Binding.when(running, 'f', Deed.FINISH, any ? "off.nobody_on_it" : why),
                Binding.when(state.isOpen(), 'p', Deed.PROMISE, why),
                Binding.when(running, 'u', Deed.PAUSE, any ? "off.nobody_on_it" : why),
                Binding.when(running, 'g', Deed.HAND_OVER, any ? "off.nobody_on_it" : why),
                Binding.when(inWork, 'h', Deed.HOLD, why),
                Binding.when(state == VisitState.HELD, 'r', Deed.RELEASE, any ? "off.not_held" : why),
                Binding.when(state.isOpen(), 'a', Deed.ADD_WORK, why),
                Binding.when(state == VisitState.BOOKED, 'i', Deed.ARRIVE, any ? "off.not_booked" : why),
                Binding.when(state == VisitState.BOOKED, 'x', Deed.CALL_OFF, any ? "off.not_booked" : why),
                Binding.when(state == VisitState.DONE, 'c', Deed.COLLECT, any ? "off.not_done" : why));
    }

    /** All on the number pad, with the digits as they lie on it. */
    private static List<Binding> next(Board board, Screen.Next screen) {
        Outlook outlook = board.expectOutlook();
        Optional<NextTask> next = NextTask.of(outlook, outlook.day().shop().expectPerson(screen.personId()));
        Optional<Task> task = next.map(NextTask::task);
        boolean running = next.filter(NextTask::isRunning).isPresent();
        boolean pointOpen = NextPoint.of(board, screen).isPresent();
        Optional<String> notYet = next.filter(each -> !each.isRunning()).flatMap(each -> whyNot(outlook, each));
        String noPoint = running ? "off.no_point_open" : "off.start_first";
        List<Binding> keys = new ArrayList<>(List.of(
                notYet.map(why -> new Binding(Key.of('5'), Deed.START, Optional.of(why)))
                        .orElseGet(() -> Binding.when(
                                task.isPresent() && !running,
                                '5',
                                Deed.START,
                                running ? "off.already_on_it" : "off.no_task")),
                Binding.when(running, '6', Deed.FINISH, "off.start_first"),
                Binding.when(pointOpen, '1', Deed.MARK_GOOD, noPoint),
                Binding.when(pointOpen, '2', Deed.MARK_WATCH, noPoint),
                Binding.when(pointOpen, '3', Deed.MARK_FIX, noPoint),
                Binding.when(pointOpen, '4', Deed.MARK_NOT_REACHED, noPoint),
                Binding.when(running, '7', Deed.POINT_BACK, "off.start_first"),
                Binding.when(task.isPresent(), '8', Deed.IN_THE_WAY, "off.no_task"),
                Binding.on('9', Deed.OTHER_WORK),
                Binding.when(!Asks.machinesToLendOn(outlook).isEmpty(), '+', Deed.LEND, "off.nothing_here"),
                Binding.when(isLent(outlook.day(), screen.personId()), '-', Deed.BRING_BACK, "off.not_lent"),
                Binding.on('.', Deed.OTHER_PERSON),
                Binding.on('0', Deed.BACK),
                Binding.on(Key.ESCAPE, Deed.BACK)));
        keys.addAll(keys.size() - 2, besideKeys(board, screen));
        if (openOnNext(board, screen).isPresent()) {
            keys.add(2, Binding.on('*', Deed.FIT_PART));
        }
        return keys;
    }

    /** Two at one terminal: the keys are about one of them at a time. */
    private static List<Binding> besideKeys(Board board, Screen.Next screen) {
        boolean isOneOfMore = board.expectDay().shop().people().size() > 1;
        return screen.beside().isPresent()
                ? List.of(Binding.on('/', Deed.OTHER_HALF), Binding.on(Key.ENTER, Deed.ALONE))
                : List.of(Binding.when(isOneOfMore, '/', Deed.BESIDE, "off.nobody_else"));
    }

    /** The part of somebody's next task of which it is to be said which was fitted. */
    static Optional<Need> openOnNext(Board board, Screen.Next screen) {
        Outlook outlook = board.expectOutlook();
        Person person = outlook.day().shop().expectPerson(screen.personId());
        return NextTask.of(outlook, person)
                .flatMap(next -> ShelfKeys.openNeed(outlook.day(), next.visit(), Optional.of(next.task())));
    }

    private static boolean isLent(Day day, String personId) {
        return day.openEntryOf(personId)
                .filter(entry -> entry.activity() instanceof Activity.Lent)
                .isPresent();
    }

    /** Why what comes next cannot be started just now, as a sentence. */
    private static Optional<String> whyNot(Outlook outlook, NextTask next) {
        Act start =
                new Act.Start(next.person().id(), next.visit().id(), next.task().id(), next.placeId());
        return Acts.apply(outlook.day(), start, outlook.at()) instanceof Outcome.Refused refused
                ? Optional.of(
                        Words.say(refused.refusal().name(), refused.refusal().values()))
                : Optional.empty();
    }

    private static List<Binding> hours(Board board, Screen.Hours screen) {
        Day day = board.expectDay();
        List<Binding> keys = new ArrayList<>();
        if (screen.page() == Screen.Hours.Page.ROWS) {
            boolean any = HoursKeys.chosen(board, screen).isPresent();
            keys.add(Binding.when(any, Key.ENTER, Deed.PUT_RIGHT, "off.no_row"));
            keys.add(Binding.when(any, 'x', Deed.STRIKE_OUT, "off.no_row"));
            keys.add(Binding.on('a', Deed.ADD_HOURS));
        }
        keys.add(Binding.on('p', Deed.HOURS_OF_PEOPLE));
        keys.add(Binding.on('m', Deed.HOURS_OF_MACHINES));
        keys.add(Binding.on('w', Deed.HOURS_OF_WEEK));
        keys.add(Binding.on('r', Deed.HOURS_BY_ROW));
        keys.add(Binding.on('b', Deed.LOOK_BACK));
        keys.add(
                HoursKeys.isUnclosed(board, screen)
                        ? Binding.on('c', Deed.CLOSE_DAY)
                        : Binding.when(isRunning(day) || isLeftOpen(day), 'c', Deed.GO_OVER_DAY, whyNotRunning(day)));
        keys.add(Binding.on(Key.LEFT, Deed.EARLIER));
        keys.add(Binding.on(Key.RIGHT, Deed.LATER));
        keys.add(Binding.on(Key.UP, Deed.UP));
        keys.add(Binding.on(Key.DOWN, Deed.DOWN));
        keys.add(Binding.on('?', Deed.HELP));
        keys.add(Binding.on(Key.ESCAPE, Deed.BACK));
        return keys;
    }

    private static List<Binding> ring(Screen.Ring screen) {
        return List.of(
                Binding.when(screen.size() > 0, Key.ENTER, Deed.NOTE_CALL, "off.nobody_to_ring"),
                Binding.on('+', Deed.MORE_WEEKS),
                Binding.on('-', Deed.FEWER_WEEKS),
                Binding.on(Key.UP, Deed.UP),
                Binding.on(Key.DOWN, Deed.DOWN),
                Binding.on('?', Deed.HELP),
                Binding.on(Key.ESCAPE, Deed.BACK));
    }

    private static List<Binding> suggested(Screen.Suggested screen) {
        return List.of(
                Binding.when(screen.chosen().isPresent(), Key.ENTER, Deed.ACCEPT_FIGURE, "off.no_suggestion"),
                Binding.on(Key.UP, Deed.UP),
                Binding.on(Key.DOWN, Deed.DOWN),
                Binding.on('?', Deed.HELP),
                Binding.on(Key.ESCAPE, Deed.BACK));
    }

    private static List<Binding> closing(Board board, Screen.Closing screen) {
        Day day = board.expectDay();
        Optional<ClosingItem> item = ClosingKeys.chosen(board, screen);
        boolean blocked =
                ClosingKeys.items(board).stream().anyMatch(each -> each.kind().blocks());
        String why = isRunning(day) ? "off.closing_blocked" : whyNotRunning(day);
        return List.of(
                Binding.when(
                        (isRunning(day) || isLeftOpen(day))
                                && item.filter(ClosingKeys::canSettle).isPresent(),
                        Key.ENTER,
                        Deed.SETTLE,
                        "off.nothing_to_settle"),
                Binding.when(isRunning(day) && !blocked, 'c', Deed.CLOSE_DAY, why),
                Binding.on(Key.UP, Deed.UP),
                Binding.on(Key.DOWN, Deed.DOWN),
                Binding.on('?', Deed.HELP),
                Binding.on(Key.ESCAPE, Deed.BACK));
    }

    private static List<Binding> machinePage(Board board, Screen.MachinePage page) {
        Optional<Machine> machine = board.expectDay().books().findMachine(page.machineId());
        boolean known = machine.isPresent();
        boolean nameable = machine.filter(each ->
                        !board.expectDay().books().expectOwner(each.ownerId()).isForgotten())
                .isPresent();
        return List.of(
                Binding.when(known, 'e', Deed.CORRECT_MACHINE, "off.machine_gone"),
                Binding.when(known, 'o', Deed.CORRECT_OWNER, "off.machine_gone"),
                Binding.when(known, 'm', Deed.MERGE, "off.machine_gone"),
                Binding.when(nameable, 'x', Deed.FORGET_OWNER, known ? "off.forgotten" : "off.machine_gone"),
                Binding.on(Key.UP, Deed.UP),
                Binding.on(Key.DOWN, Deed.DOWN),
                Binding.on('?', Deed.HELP),
                Binding.on(Key.ESCAPE, Deed.BACK));
    }

    /** Whether somebody forgot to clock off before today: that can be settled before the day is opened. */
    private static boolean isLeftOpen(Day day) {
        return !day.unsettled().isEmpty();
    }

    static boolean isRunning(Day day) {
        return day.isOpened() && !day.isClosed();
    }

    static String whyNotRunning(Day day) {
        return day.isClosed() ? "off.day_closed" : "off.day_not_open";
    }
}
