package org.shedboard.board;

import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import org.shedboard.ahead.Weeks;
import org.shedboard.day.Comparison;
import org.shedboard.day.RingList;
import org.shedboard.day.Round;
import org.shedboard.day.WhatIf;
import org.shedboard.day.WhyPlanned;
import org.shedboard.day.WhySoLong;
import org.shedboard.forecast.Suggestion;
import org.shedboard.learn.Scorecard;
import org.shedboard.words.When;

/** Which screen is shown, and what is selected or typed on it. */
public sealed interface Screen {
    /** The day is being read. */
    record Loading() implements Screen {}

    /** No shop yet: one's own, or the demonstration. */
    record FirstRun() implements Screen {}

    /** One's own shop being set up. */
    record Setup(SetupForm form) implements Screen {}

    /** The day being opened. */
    record Opening(OpenForm form) implements Screen {}

    /**
     * The bay board.
     *
     * @param selected id of the visit the keys are about
     */
    record Places(Optional<String> selected) implements Screen {
        public static final Places START = new Places(Optional.empty());

        Places select(String visitId) {
            return new Places(Optional.of(visitId));
        }
    }

    /**
     * Everything that is here or due, a line each.
     *
     * @param filter what the machines shown have among their words
     * @param isTyping whether what is pressed goes into the filter
     * @param selected id of the visit the keys are about
     */
    record YardPage(Typing filter, boolean isTyping, YardOrder order, Optional<String> selected) implements Screen {
        static final YardPage START = new YardPage(Typing.EMPTY, false, YardOrder.PLAN, Optional.empty());

        YardPage filtered(Typing next) {
            return new YardPage(next, isTyping, order, selected);
        }

        YardPage typing(boolean now) {
            return new YardPage(filter, now, order, selected);
        }

        YardPage in(YardOrder next) {
            return new YardPage(filter, isTyping, next, selected);
        }

        YardPage select(Optional<String> visitId) {
            return new YardPage(filter, isTyping, order, visitId);
        }
    }

    /** A task being moved by hand over the bay board. */
    record InHand(Hand hand) implements Screen {}

    /**
     * Each person's day on the time axis of the bay board.
     *
     * @param row the person that is chosen, counted from the first
     */
    record Crew(int row) implements Screen {
        static final Crew START = new Crew(0);
    }

    /**
     * Everything of one visit.
     *
     * @param task which of its tasks the keys are about, counted through all stays
     * @param scroll lines the page is moved up beyond what shows that task
     */
    record Sheet(String visitId, int task, int scroll) implements Screen {}

    /**
     * One person's next machine; or those of two who stand at one terminal, of whom the keys are about the one named first here.
     *
     * @param pointBack id of a point that is looked at again
     * @param isMarked whether the point got a finding that is on its way into the records; looking at another one ends that
     * @param beside the other of two people; empty where one is alone
     * @param isSecond whether the other one stands before this one on the screen
     */
    record Next(String personId, Optional<String> pointBack, boolean isMarked, Optional<Next> beside, boolean isSecond)
            implements Screen {
        public Next(String personId, Optional<String> pointBack) {
            this(personId, pointBack, false, Optional.empty(), false);
        }

        Next again(String pointId) {
            return new Next(personId, Optional.of(pointId), false, beside, isSecond);
        }

        Next marked() {
            return new Next(personId, pointBack, true, beside, isSecond);
        }

        /** To the next point, if this one was marked by that person and they have not gone to another since. */
        Next onward(String by) {
            boolean isDone = isMarked && personId.equals(by);
            return new Next(
                    personId,
                    isDone ? Optional.empty() : pointBack,
                    isMarked && !isDone,
                    beside.map(other -> other.onward(by)),
                    isSecond);
        }

        /** Somebody else's instead of this person's; who stands beside stays. */
        Next of(String otherId) {
            return new Next(otherId, Optional.empty(), false, beside, isSecond);
        }

        /** Somebody comes to stand beside this person, and has the keys. */
        Next joinedBy(String otherId) {
            return new Next(otherId, Optional.empty(), false, Optional.of(alone()), true);
        }

        /** The other one has the keys. */
        Next turned() {
            return beside.map(other ->
                            new Next(other.personId, other.pointBack, other.isMarked, Optional.of(alone()), !isSecond))
                    .orElse(this);
        }

        Next alone() {
            return new Next(personId, pointBack, isMarked, Optional.empty(), false);
        }
    }

    /**
     * The hours of a day, or of the week it is in.
     *
     * @param scroll rows of the page's list moved up; on the page of rows, the one that is chosen
     */
    record Hours(Page page, LocalDate date, int scroll) implements Screen {
        /** What is looked at. */
        public enum Page {
            PEOPLE,
            MACHINES,
            WEEK,
            MONTH,
            /** The rows the hours are counted from, to put one right. */
            ROWS
        }

        Hours on(Page next) {
            return new Hours(next, date, 0);
        }

        Hours on(LocalDate next) {
            return new Hours(page, next, 0);
        }

        Hours scrolledTo(int row) {
            return new Hours(page, date, Math.max(0, row));
        }

        /** The first of the days it shows. */
        public LocalDate from() {
            return switch (page) {
                case WEEK -> date.with(TemporalAdjusters.previousOrSame(When.firstOfWeek()));
                case MONTH -> date.withDayOfMonth(1);
                case PEOPLE, MACHINES, ROWS -> date;
            };
        }

        /** The day after the last one it shows. */
        public LocalDate until() {
            return switch (page) {
                case WEEK -> from().plusWeeks(1);
                case MONTH -> from().plusMonths(1);
                case PEOPLE, MACHINES, ROWS -> date.plusDays(1);
            };
        }

        /** The same page of the day, week or month so many before or after. */
        Hours moved(int by) {
            return on(
                    switch (page) {
                        case WEEK -> date.plusWeeks(by);
                        case MONTH -> from().plusMonths(by);
                        case PEOPLE, MACHINES, ROWS -> date.plusDays(by);
                    });
        }
    }

    /**
     * What there is to look at before the day is closed.
     *
     * @param row the one that is chosen
     */
    record Closing(int row) implements Screen {}

    /**
     * Whom to ring: who has to hear something today, then whose services are due.
     *
     * @param weeks how far ahead services are looked for
     * @param row the one that is chosen, counted through today's calls and then the services
     */
    record Ring(Round round, RingList list, int weeks, int row) implements Screen {
        /** How many there are to ring. */
        int size() {
            return round.calls().size() + list.calls().size();
        }

        /** With a row chosen; the nearest there is. */
        Ring to(int wanted) {
            return new Ring(round, list, weeks, Math.max(0, Math.min(size() - 1, wanted)));
        }

        /** Which of the services is chosen, counted from the first; less than none on a call of today. */
        public int serviceRow() {
            return row - round.calls().size();
        }

        /** The machine whose service is due; empty where another call or none is chosen. */
        public Optional<RingList.Call> chosen() {
            int index = serviceRow();
            return index >= 0 && index < list.calls().size()
                    ? Optional.of(list.calls().get(index))
                    : Optional.empty();
        }

        /** The machine whose owner has to hear something today; empty where another call or none is chosen. */
        public Optional<Round.Call> chosenToday() {
            return row < round.calls().size() ? Optional.of(round.calls().get(row)) : Optional.empty();
        }
    }

    /**
     * The figures of the catalogue that finished work contradicts.
     *
     * @param row the one that is chosen
     */
    record Suggested(List<Suggestion> list, int row) implements Screen {
        public Suggested {
            list = List.copyOf(list);
        }

        /** The one to accept; empty where there is none. */
        public Optional<Suggestion> chosen() {
            return row < list.size() ? Optional.of(list.get(row)) : Optional.empty();
        }

        /** With a row chosen; the nearest there is. */
        Suggested to(int wanted) {
            return new Suggested(list, Math.max(0, Math.min(list.size() - 1, wanted)));
        }
    }

    /**
     * The shelf.
     *
     * @param row the item that is chosen
     */
    record Shelf(int row) implements Screen {}

    /**
     * The weeks ahead.
     *
     * @param weeks as they were when the day was last read: what is due is not looked for at every key
     * @param row the day that is chosen, counted from the first
     */
    record Ahead(Weeks weeks, Page page, int row) implements Screen {
        /** What of the days is looked at. */
        public enum Page {
            PLACES,
            SKILLS
        }

        /** With a day chosen, counted from the first; the nearest there is. */
        Ahead to(int wanted) {
            int last = Math.max(0, weeks.days().size() - 1);
            return new Ahead(weeks, page, Math.max(0, Math.min(last, wanted)));
        }

        Ahead showing(Page other) {
            return new Ahead(weeks, other, row);
        }
    }

    /**
     * How right what was said was.
     *
     * @param card as it was when the day was last read: it is not made at every key
     * @param scroll lines the page is moved up
     */
    record ScorecardPage(Scorecard card, Page page, int scroll) implements Screen {
        /** What of it is looked at. */
        public enum Page {
            SAID,
            DRAWN,
            ASIDE
        }

        ScorecardPage showing(Page other) {
            return new ScorecardPage(card, other, 0);
        }

        ScorecardPage scrolledTo(int line) {
            return new ScorecardPage(card, page, Math.max(0, line));
        }
    }

    /** A machine being taken in. */
    record TakeIn(TakeInForm form) implements Screen {}

    /**
     * Machines and owners, found by what is typed; all of them while nothing is.
     *
     * @param row the one that is chosen
     */
    record Register(Typing find, int row) implements Screen {
        static final Register START = new Register(Typing.EMPTY, 0);
    }

    /**
     * What the register says of one machine.
     *
     * @param scroll lines the page is moved up
     */
    record MachinePage(String machineId, int scroll) implements Screen {
        MachinePage(String machineId) {
            this(machineId, 0);
        }
    }

    /**
     * Where the minutes of one visit come from.
     *
     * @param why as it was when the day was last read: what was learned is not gone through at every key
     * @param scroll lines the page is moved up
     */
    record Minutes(WhySoLong why, int scroll) implements Screen {}

    /**
     * A change tried on a copy of the day, or a better plan that is offered.
     *
     * @param answer what comes of it; empty while it is worked out
     * @param row the visit that is chosen, counted from the first that changes
     */
    record Trial(WhatIf whatIf, Optional<WhatIf.Answer> answer, int row) implements Screen {
        static Trial of(WhatIf whatIf) {
            return new Trial(whatIf, Optional.empty(), 0);
        }

        /** What it changes; empty while that is worked out, or when it cannot be. */
        public Optional<Comparison> comparison() {
            return answer.filter(WhatIf.Answer.Tried.class::isInstance)
                    .map(tried -> ((WhatIf.Answer.Tried) tried).comparison());
        }

        WhatIf.Answer.Tried expectTried() {
            return (WhatIf.Answer.Tried) answer.orElseThrow();
        }

        Trial answered(WhatIf.Answer next) {
            return new Trial(whatIf, Optional.of(next), 0).to(row);
        }

        /** With a row chosen; the nearest there is. */
        Trial to(int wanted) {
            int last = comparison().map(each -> each.rows().size() - 1).orElse(0);
            return new Trial(whatIf, answer, Math.max(0, Math.min(last, wanted)));
        }
    }

    /**
     * Why a task of a visit is planned as it is.
     *
     * @param task which of its tasks, counted through all stays
     * @param why as it was when the day was last read; empty when the task is not in the plan
     * @param scroll lines the page is moved up
     */
    record Why(String visitId, int task, Optional<WhyPlanned> why, int scroll) implements Screen {
        Why scrolledTo(int line) {
            return new Why(visitId, task, why, Math.max(0, line));
        }
    }

    /**
     * The keys of a screen, with what they do.
     *
     * @param scroll lines the list is moved up
     */
    record Help(List<Binding> bindings, int scroll) implements Screen {
        public Help {
            bindings = List.copyOf(bindings);
        }
    }
}
