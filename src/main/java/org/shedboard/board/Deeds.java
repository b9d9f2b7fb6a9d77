package org.shedboard.board;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shedboard.day.Act;
import org.shedboard.day.Figures;
import org.shedboard.day.NextTask;
import org.shedboard.day.Outlook;
import org.shedboard.day.Riding;
import org.shedboard.day.WeeksAhead;
import org.shedboard.day.WhatIf;
import org.shedboard.day.WhySoLong;
import org.shedboard.learn.Scorecard;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Person;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** Performs what a key stands for. Only keys that are on come here. */
final class Deeds {
    /** A page is not moved up further than this. */
    private static final int MOST_LINES = 500;

    /** A few lines fewer than the smallest page has for its list, so that the eye keeps its place. */
    private static final int LINES_FURTHER = 6;

    private final Board board;

    Deeds(Board board) {
        this.board = board;
    }

    Turn perform(Deed deed) {
        if (board.screen() instanceof Screen.Opening opening && deed != Deed.BACK) {
            return new OpenKeys(board, opening.form()).perform(deed);
        }
        if (board.screen() instanceof Screen.Next next && deed != Deed.BACK) {
            return onNext(next, deed);
        }
        return switch (deed) {
            case UP -> Turn.to(moved(-1));
            case DOWN -> Turn.to(moved(1));
            case FURTHER_DOWN -> Turn.to(scrolled(LINES_FURTHER));
            case FURTHER_UP -> Turn.to(scrolled(-LINES_FURTHER));
            case BACK -> back();
            case QUIT -> Turn.to(board, new Effect.Quit());
            case HELP -> Turn.to(board.on(new Screen.Help(Keys.of(board), 0)));
            case OWN_SHOP -> Turn.to(board.onlyOn(new Screen.Setup(SetupForm.USUAL)));
            case DEMONSTRATION -> Turn.to(board.onlyOn(new Screen.Loading()), new Effect.OpenDemonstration());
            case TAKE_IN -> takeIn();
            case OPEN_DAY -> Turn.to(board.on(new Screen.Opening(OpenForm.of(board.expectDay()))));
            case TALLY ->
                Turn.to(board.on(new Screen.Hours(
                        Screen.Hours.Page.PEOPLE, board.expectDay().date(), 0)));
            case HOURS_OF_PEOPLE,
                    HOURS_OF_MACHINES,
                    HOURS_OF_WEEK,
                    HOURS_BY_ROW,
                    LOOK_BACK,
                    PUT_RIGHT,
                    STRIKE_OUT,
                    ADD_HOURS,
                    EARLIER,
                    LATER -> new HoursKeys(board, (Screen.Hours) board.screen()).perform(deed);
            case WHOM_TO_RING -> Turn.to(board.on(RingKeys.of(board, 1, 0)));
            case NOTE_CALL, MORE_WEEKS, FEWER_WEEKS -> new RingKeys(board, (Screen.Ring) board.screen()).perform(deed);
            case SUGGESTIONS -> Turn.to(board.on(SuggestKeys.of(board, 0)));
            case ACCEPT_FIGURE -> new SuggestKeys(board, (Screen.Suggested) board.screen()).accept();
            case SHELF -> Turn.to(board.on(new Screen.Shelf(0)));
            case COUNT, ORDER, HAS_COME ->
                new ShelfKeys(board)
                        .perform(
                                deed,
                                ShelfKeys.chosen(board, (Screen.Shelf) board.screen())
                                        .orElseThrow());
            case FIT_PART ->
                new ShelfKeys(board).askFitted(Keys.openOnSheet(board).orElseThrow(), board.who());
            case WEEKS_AHEAD -> Turn.to(board.on(ahead(board, Screen.Ahead.Page.PLACES)));
            case AHEAD_PLACES -> ahead(Screen.Ahead.Page.PLACES);
            case AHEAD_SKILLS -> ahead(Screen.Ahead.Page.SKILLS);
            case SCORECARD -> Turn.to(board.on(scorecard(board, Screen.ScorecardPage.Page.SAID)));
            case SCORE_SAID -> scorecard(Screen.ScorecardPage.Page.SAID);
            case SCORE_DRAWN -> scorecard(Screen.ScorecardPage.Page.DRAWN);
            case SCORE_ASIDE -> scorecard(Screen.ScorecardPage.Page.ASIDE);
            case GO_OVER_DAY -> Turn.to(board.on(new Screen.Closing(0)));
            case SETTLE ->
                new ClosingKeys(board)
                        .settle(ClosingKeys.chosen(board, (Screen.Closing) board.screen())
                                .orElseThrow());
            case MACHINES -> Turn.to(board.withFinder().on(Screen.Register.START));
            case MACHINE_PAGE ->
                RegisterKeys.open(board, Subject.of(board).orElseThrow().visit().machineId());
            case CORRECT_MACHINE, CORRECT_OWNER, MERGE, FORGET_OWNER ->
                new MachineKeys(board, (Screen.MachinePage) board.screen()).perform(deed);
            case SEE_EARLIER, SEE_LATER, SEE_CLOSER, SEE_FURTHER, SEE_NOW -> Turn.to(SightKeys.after(board, deed));
            case PICK_UP,
                    MOVE_EARLIER,
                    MOVE_LATER,
                    PLACE_ABOVE,
                    PLACE_BELOW,
                    NEXT_PERSON,
                    NEXT_TASK,
                    DROP,
                    PUT_BACK,
                    LIFT -> new HandKeys(board).perform(deed);
            case CREW_DAY -> Turn.to(crewDay());
            case YARD -> Turn.to(YardKeys.open(board));
            case FILTER_YARD, ORDER_YARD, SHOW_WHOLE_YARD ->
                new YardKeys(board, (Screen.YardPage) board.screen()).perform(deed);
            case CREW_MEMBER -> Turn.to(board.asking(asks().crewMember(CrewKeys.chosen(board))));
            case TAKE_BACK -> new TakeBackKeys(board).ask();
            case NEXT -> next();
            case CREW -> Turn.to(board.asking(asks().crew()));
            case CHECK_HOIST -> checkHoist();
            case CLOSE_DAY ->
                board.screen() instanceof Screen.Hours hours
                        ? new HoursKeys(board, hours).perform(deed)
                        : new ClosingKeys(board).close();
            case OFFER -> TrialKeys.offer(board);
            case WHAT_IF -> {
                Screen.Trial trial = Screen.Trial.of(WhatIf.NOTHING);
                yield TrialKeys.again(board.on(trial), trial);
            }
            case TRY_PROMISE, TRY_WASHED, TRY_LESS, KEEP, POST_OFFER ->
                new TrialKeys(board, (Screen.Trial) board.screen()).perform(deed);
            default -> onVisit(deed, Subject.of(board).orElseThrow());
        };
    }

    /** What was in hand meanwhile may be gone; what is tried may have been worked out, or the day read, while something else stood over it. */
    private Turn back() {
        Board before = board.back();
        if (before.screen() instanceof Screen.InHand held) {
            return Turn.to(HandKeys.again(before, held));
        }
        return before.screen() instanceof Screen.Trial trial ? TrialKeys.again(before, trial) : Turn.to(before);
    }

    private Turn onVisit(Deed deed, Subject subject) {
        Visit visit = subject.visit();
        return switch (deed) {
            case SHEET -> Turn.to(board.on(new Screen.Sheet(visit.id(), firstOpen(visit), 0)));
            case START ->
                Turn.to(board.asking(asks().whoStarts(subject, subject.toStart().orElseThrow())));
            case FINISH -> finish(visit, subject.running().orElseThrow());
            case PAUSE ->
                carry(new Act.Pause(visit.id(), subject.running().orElseThrow().id()));
            case HAND_OVER ->
                Turn.to(board.asking(
                        asks().whoTakesOver(visit, subject.running().orElseThrow())));
            case HOLD -> Turn.to(board.asking(asks().whyHeld(visit)));
            case RELEASE -> carry(new Act.Release(visit.id()));
            case PROMISE -> Turn.to(board.asking(asks().whatTime(visit)));
            case ADD_WORK -> Turn.to(board.asking(asks().whichWork(visit)));
            case ARRIVE -> Turn.to(board.asking(asks().howMuddy(visit)));
            case LEND_OURS -> Turn.to(board.asking(LoanKeys.whichOfOurs(board.expectDay(), visit)));
            case OURS_BACK ->
                carry(new Act.GetBack(LoanKeys.outFor(subject).orElseThrow().id()));
            case CALL_OFF -> Turn.to(board.asking(asks().callOff(visit)));
            case COLLECT ->
                Riding.isStopped(board.expectDay(), visit)
                        ? Turn.to(board.asking(new InspectAsks(board.expectDay()).whoHandsOver(visit)))
                        : carry(new Act.Collect(visit.id(), Optional.empty()));
            case ASK_OWNER -> Fixes.ask(board, visit);
            case WHY_PLANNED -> Turn.to(board.on(WhyKeys.of(subject)));
            case WHY_SO_LONG -> Turn.to(board.on(new Screen.Minutes(WhySoLong.of(board.expectDay(), visit), 0)));
            case REPORT -> Turn.to(board, new Effect.WriteReport(visit.id()));
            default -> throw new IllegalStateException(deed + " is nothing to do with a visit");
        };
    }

    static int firstOpen(Visit visit) {
        List<Task> tasks = visit.tasks();
        for (int i = 0; i < tasks.size(); i++) {
            if (!tasks.get(i).isDone()) {
                return i;
            }
        }
        return 0;
    }

    private Turn finish(Visit visit, Task task) {
        return carry(new Act.Finish(task.progress().person().orElseThrow(), visit.id(), task.id(), Optional.empty()));
    }

    private Turn onNext(Screen.Next screen, Deed deed) {
        Outlook outlook = board.expectOutlook();
        Person person = outlook.day().shop().expectPerson(screen.personId());
        return switch (deed) {
            case OTHER_PERSON -> Turn.to(board.asking(asks().whoseInstead(screen)));
            case BESIDE -> Turn.to(board.asking(asks().whoJoins(screen)));
            case OTHER_HALF -> Turn.to(board.with(screen.turned()));
            case ALONE -> Turn.to(board.with(screen.alone()));
            case OTHER_WORK -> Turn.to(board.asking(asks().otherWork(person.id())));
            case LEND -> Turn.to(board.asking(asks().whereToLend(person)));
            case FIT_PART ->
                new ShelfKeys(board).askFitted(Keys.openOnNext(board, screen).orElseThrow(), person.id());
            case BRING_BACK -> carry(new Act.BringBack(person.id()));
            case POINT_BACK ->
                NextPoint.before(board, screen)
                        .map(point -> Turn.to(board.with(screen.again(point))))
                        .orElse(Turn.to(board.noting(Note.refused(Words.say("off.no_point_before")))));
            case MARK_GOOD -> tick(screen, Mark.GOOD);
            case MARK_WATCH -> tick(screen, Mark.WATCH);
            case MARK_FIX -> tick(screen, Mark.FIX);
            case MARK_NOT_REACHED -> tick(screen, Mark.NOT_REACHED);
            default -> onNextTask(deed, NextTask.of(outlook, person).orElseThrow());
        };
    }

    private Turn onNextTask(Deed deed, NextTask next) {
        return switch (deed) {
            case START ->
                carry(new Act.Start(
                        next.person().id(), next.visit().id(), next.task().id(), next.placeId()));
            case FINISH -> finish(next.visit(), next.task());
            case IN_THE_WAY -> Turn.to(board.asking(asks().whyHeld(next.visit())));
            default -> throw new IllegalStateException(deed + " is no key of this screen");
        };
    }

    /** The finding is recorded at once, but for one that needs its reason; a value to read off is asked for after it. */
    private Turn tick(Screen.Next screen, Mark mark) {
        NextPoint now = NextPoint.of(board, screen).orElseThrow();
        Act.Tick tick = new Act.Tick(
                screen.personId(), now.task().visit().id(), now.point().id(), mark, OptionalDouble.empty(), "");
        if (mark == Mark.NOT_REACHED) {
            return Turn.to(board.with(screen.marked())
                    .asking(new InspectAsks(board.expectDay()).whyNotReached(tick, now.point())));
        }
        Turn turn = Turn.to(board.with(screen.marked()).saving(1), new Effect.CarryOut(tick));
        if (now.point().measure().isEmpty()) {
            return turn;
        }
        var measure = now.point().measure().get();
        String title = Words.say(
                "ask.measured",
                now.point().name(),
                measure.unit(),
                Figures.say(measure.low()),
                Figures.say(measure.high()));
        Overlay ask = new Overlay.TypeIn(title, Typing.EMPTY, new Overlay.Purpose.Measured(tick));
        return new Turn(turn.board().asking(ask), turn.effects());
    }

    /** A form that was left half filled in is there again, if that is what is wanted. */
    private Turn takeIn() {
        if (board.draft().isEmpty()) {
            return Turn.to(board.on(new Screen.TakeIn(TakeInForm.EMPTY)));
        }
        List<Overlay.Choice> choices = List.of(
                show('1', "ask.draft_on", new Screen.TakeIn(board.draft().get())),
                show('2', "ask.draft_new", new Screen.TakeIn(TakeInForm.EMPTY)));
        return Turn.to(board.asking(new Overlay.Choose(Words.say("ask.kept_draft"), choices, 0)));
    }

    private static Overlay.Choice show(char key, String text, Screen screen) {
        return new Overlay.Choice(key, Words.say(text), Optional.empty(), new Overlay.Reply.Show(screen));
    }

    /** On the crew's screen it is clear whose. */
    private Turn next() {
        return board.screen() instanceof Screen.Crew
                ? Turn.to(board.on(new Screen.Next(CrewKeys.chosen(board).id(), Optional.empty())))
                : Turn.to(board.asking(asks().whoseNext()));
    }

    /** From the yard, which stands beside it, Escape leads back where it would have led from there. */
    private Board crewDay() {
        return board.screen() instanceof Screen.YardPage ? board.with(Screen.Crew.START) : board.on(Screen.Crew.START);
    }

    private Turn checkHoist() {
        return board.expectDay().shop().hoists().isEmpty()
                ? Turn.to(board.noting(Note.refused(Words.say("off.no_hoist"))))
                : Turn.to(board.asking(asks().whichHoist(board.who())));
    }

    private Board moved(int by) {
        if (board.screen() instanceof Screen.Places places) {
            return movedOnPlaces(places, by);
        }
        if (board.screen() instanceof Screen.YardPage yard) {
            return new YardKeys(board, yard).moved(by);
        }
        if (board.screen() instanceof Screen.Crew crew) {
            return CrewKeys.moved(board, crew.row() + by);
        }
        if (board.screen() instanceof Screen.Sheet sheet) {
            int last = board.expectDay().expectVisit(sheet.visitId()).tasks().size() - 1;
            int task = Math.max(0, Math.min(last, sheet.task() + by));
            return board.with(new Screen.Sheet(sheet.visitId(), task, 0));
        }
        if (board.screen() instanceof Screen.Trial trial) {
            return board.with(trial.to(trial.row() + by));
        }
        if (board.screen() instanceof Screen.Why why) {
            return board.with(WhyKeys.moved(board, why, by));
        }
        if (board.screen() instanceof Screen.Hours hours) {
            return board.with(hours.scrolledTo(Math.min(HoursKeys.lastRow(board, hours), hours.scroll() + by)));
        }
        if (board.screen() instanceof Screen.MachinePage page) {
            int scroll = Math.max(0, Math.min(MOST_LINES, page.scroll() + by));
            return board.with(new Screen.MachinePage(page.machineId(), scroll));
        }
        if (board.screen() instanceof Screen.Minutes minutes) {
            int scroll = Math.max(0, Math.min(MOST_LINES, minutes.scroll() + by));
            return board.with(new Screen.Minutes(minutes.why(), scroll));
        }
        if (board.screen() instanceof Screen.Closing closing) {
            int last = Math.max(0, ClosingKeys.items(board).size() - 1);
            return board.with(new Screen.Closing(Math.max(0, Math.min(last, closing.row() + by))));
        }
        if (board.screen() instanceof Screen.Ring ring) {
            return board.with(ring.to(ring.row() + by));
        }
        if (board.screen() instanceof Screen.Suggested suggested) {
            return board.with(suggested.to(suggested.row() + by));
        }
        if (board.screen() instanceof Screen.Shelf shelf) {
            int last = Math.max(0, ShelfKeys.rows(board).size() - 1);
            return board.with(new Screen.Shelf(Math.max(0, Math.min(last, shelf.row() + by))));
        }
        if (board.screen() instanceof Screen.Ahead ahead) {
            return board.with(ahead.to(ahead.row() + by));
        }
        if (board.screen() instanceof Screen.Help help) {
            int last = help.bindings().size() - 1;
            return board.with(new Screen.Help(help.bindings(), Math.max(0, Math.min(last, help.scroll() + by))));
        }
        if (board.screen() instanceof Screen.ScorecardPage page) {
            return board.with(page.scrolledTo(Math.min(MOST_LINES, page.scroll() + by)));
        }
        return board;
    }

    private Turn ahead(Screen.Ahead.Page page) {
        return Turn.to(board.with(((Screen.Ahead) board.screen()).showing(page)));
    }

    /** The weeks as they are at this moment. */
    static Screen.Ahead ahead(Board board, Screen.Ahead.Page page) {
        return new Screen.Ahead(
                WeeksAhead.withDue(board.expectDay(), board.expectOutlook().at()), page, 0);
    }

    private Turn scorecard(Screen.ScorecardPage.Page page) {
        return Turn.to(board.with(((Screen.ScorecardPage) board.screen()).showing(page)));
    }

    /** The scorecard as it is at this moment. */
    static Screen.ScorecardPage scorecard(Board board, Screen.ScorecardPage.Page page) {
        return new Screen.ScorecardPage(board.expectDay().books().experience().scorecard(Scorecard.USUAL), page, 0);
    }

    /** However far it goes, the page stops at its last line. */
    private Board scrolled(int by) {
        if (board.screen() instanceof Screen.Why why) {
            return board.with(why.scrolledTo(Math.min(MOST_LINES, why.scroll() + by)));
        }
        Screen.Sheet sheet = (Screen.Sheet) board.screen();
        return board.with(new Screen.Sheet(sheet.visitId(), sheet.task(), Math.max(0, sheet.scroll() + by)));
    }

    private Board movedOnPlaces(Screen.Places places, int by) {
        List<Visit> listed = Yard.of(board.expectOutlook());
        if (listed.isEmpty()) {
            return board;
        }
        int index = Subject.selected(board.expectOutlook(), places)
                .map(listed::indexOf)
                .orElse(0);
        int next = Math.max(0, Math.min(listed.size() - 1, index + by));
        return board.with(places.select(listed.get(next).id()));
    }

    private Turn carry(Act act) {
        return Turn.to(board.saving(1), new Effect.CarryOut(act));
    }

    private Asks asks() {
        return new Asks(board.expectOutlook());
    }
}
