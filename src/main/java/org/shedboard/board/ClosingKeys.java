package org.shedboard.board;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Overlay.Purpose;
import org.shedboard.day.Act;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Person;
import org.shedboard.tally.ClosingItem;
import org.shedboard.tally.ClosingList;
import org.shedboard.words.Words;

/** What keys do while the day is gone over before it is closed. */
public final class ClosingKeys {
    private final Board board;
    private final Outlook outlook;
    private final Day day;

    ClosingKeys(Board board) {
        this.board = board;
        this.outlook = board.expectOutlook();
        this.day = outlook.day();
    }

    /** What there is to look at. */
    public static List<ClosingItem> items(Board board) {
        return ClosingList.of(board.expectOutlook(), board.seen().orElseThrow().tally());
    }

    /** What the keys are about; empty where nothing is left. */
    static Optional<ClosingItem> chosen(Board board, Screen.Closing screen) {
        List<ClosingItem> items = items(board);
        return screen.row() < items.size() ? Optional.of(items.get(screen.row())) : Optional.empty();
    }

    /** Whether something can be said to an item here. */
    static boolean canSettle(ClosingItem item) {
        return item.kind().blocks() || item.kind() == ClosingItem.Kind.REST_TO_SAY;
    }

    Turn settle(ClosingItem item) {
        ClockEntry entry = item.entry().orElseThrow();
        return Turn.to(board.asking(
                item.kind() == ClosingItem.Kind.REST_TO_SAY
                        ? wasItFree(entry)
                        : whenDidItEnd(entry, !entry.from().isBefore(day.origin()))));
    }

    /**
     * Now, at knock-off where that is over, or at a time to type: never guessed.
     *
     * @param leaves whether they went home with that; who forgot to clock off yesterday may be here today
     */
    private Overlay whenDidItEnd(ClockEntry entry, boolean leaves) {
        String person = entry.personId();
        ChoiceList choices = new ChoiceList();
        knockOff(entry)
                .ifPresent(at -> choices.carry(
                        Words.say("ask.at_knock_off", Clocks.sayTime(day, at)),
                        new Act.Stop(person, leaves, Optional.of(at))));
        choices.carry(
                Words.say("ask.ended_now", Clocks.sayTime(day, outlook.at())),
                new Act.Stop(person, leaves, Optional.empty()));
        choices.ask(
                Words.say("ask.ended_at"),
                new Overlay.TypeIn(
                        Words.say("ask.when_ended", day.nameOf(person)),
                        Typing.EMPTY,
                        new Purpose.WentOff(person, leaves, entry.from())));
        return choices.titled(Words.say(leaves ? "ask.when_left" : "ask.when_off", day.nameOf(person)));
    }

    private Optional<Instant> knockOff(ClockEntry entry) {
        LocalDate date = LocalDate.ofInstant(entry.from(), day.zone());
        return day.shop()
                .findPerson(entry.personId())
                .map(Person::knockOff)
                .map(time -> date.atTime(time).atZone(day.zone()).toInstant())
                .filter(at -> at.isAfter(entry.from()) && at.isBefore(outlook.at()));
    }

    private Overlay wasItFree(ClockEntry entry) {
        ChoiceList choices = new ChoiceList();
        choices.ask(Words.say("ask.was_worked"), whoSays(entry, Activity.Break.Kind.REST));
        choices.ask(Words.say("ask.was_free"), whoSays(entry, Activity.Break.Kind.OFF_DUTY));
        return choices.titled(Words.say(
                "ask.was_it_free",
                day.nameOf(entry.personId()),
                Clocks.sayTime(day, entry.from()),
                Clocks.sayTime(day, entry.to().orElseThrow())));
    }

    private Overlay whoSays(ClockEntry entry, Activity.Break.Kind kind) {
        Act.Correct.Written right = new Act.Correct.Written(
                entry.personId(),
                new Activity.Break(kind),
                entry.from(),
                entry.to().orElseThrow());
        Optional<String> replaces = Optional.of(entry.id()).filter(id -> !id.isEmpty());
        String why = Words.say(kind == Activity.Break.Kind.REST ? "ask.was_worked" : "ask.was_free");
        return new Signatures(board)
                .whoAnswers(new Act.Correct(board.who(), replaces, Optional.of(right), why), why, day.date());
    }

    /** Who closes the day signs it. */
    Turn close() {
        ChoiceList choices = new ChoiceList();
        for (Person person : day.shop().people()) {
            choices.carry(person.name(), new Act.CloseDay(person.id()));
        }
        return Turn.to(board.asking(choices.titled(Words.say("ask.who_closes"))));
    }
}
