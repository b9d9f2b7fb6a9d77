package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Overlay.Choice;
import org.shedboard.board.Overlay.Reply;
import org.shedboard.day.Day;
import org.shedboard.shop.Person;
import org.shedboard.words.Words;

/** What keys do while the day is being opened. */
final class OpenKeys {
    private final Board board;
    private final OpenForm form;

    OpenKeys(Board board, OpenForm form) {
        this.board = board;
        this.form = form;
    }

    Turn perform(Deed deed) {
        return switch (deed) {
            case UP -> show(form.on(form.row() - 1));
            case DOWN -> show(form.on(form.row() + 1));
            case TOGGLE -> toggle();
            case SET_UNTIL -> until();
            case CONFIRM -> confirm();
            default -> Turn.to(board);
        };
    }

    private Turn toggle() {
        if (form.isOnPerson()) {
            OpenForm.Who who = form.person();
            return show(form.with(new OpenForm.Who(who.personId(), !who.here(), who.from(), who.until())));
        }
        return Turn.to(board.asking(whoChecked(board.expectDay())));
    }

    private Overlay whoChecked(Day day) {
        String hoist = form.placeOf(day).name();
        List<Choice> choices = new ArrayList<>();
        char key = '1';
        for (OpenForm.Who who : form.people()) {
            Person person = day.shop().expectPerson(who.personId());
            if (who.here()) {
                choices.add(new Choice(key++, person.name(), Optional.empty(), reply(Optional.of(person.id()))));
            }
        }
        choices.add(new Choice(
                '0',
                Words.say("ask.lock_out"),
                Optional.empty(),
                new Reply.Ask(new Overlay.TypeIn(
                        Words.say("ask.why_locked_out", hoist),
                        Typing.EMPTY,
                        new Overlay.Purpose.OpenLockOut(form.row())))));
        choices.add(new Choice('9', Words.say("ask.not_checked"), Optional.empty(), reply(Optional.empty())));
        return new Overlay.Choose(Words.say("ask.who_checked", hoist), choices, 0);
    }

    private Reply reply(Optional<String> checkedBy) {
        OpenForm.Hoist hoist = new OpenForm.Hoist(form.hoist().placeId(), checkedBy, Optional.empty());
        return new Reply.Show(new Screen.Opening(form.with(hoist)));
    }

    private Turn until() {
        if (!form.isOnPerson()) {
            return toggle();
        }
        Day day = board.expectDay();
        String now = Moments.typed(day, form.person().until());
        return Turn.to(board.asking(new Overlay.TypeIn(
                Words.say("ask.until", form.personOf(day).name()),
                Typing.of(now),
                new Overlay.Purpose.OpenUntil(form.row()))));
    }

    /** Who opens the day is asked for by name; unchecked hoists stay closed, which the question says. */
    private Turn confirm() {
        Day day = board.expectDay();
        List<Choice> choices = new ArrayList<>();
        char key = '1';
        for (OpenForm.Who who : form.people()) {
            if (who.here()) {
                choices.add(new Choice(
                        key++,
                        day.shop().expectPerson(who.personId()).name(),
                        Optional.empty(),
                        new Reply.Carry(form.openedBy(who.personId()).act())));
            }
        }
        if (choices.isEmpty()) {
            return Turn.to(board.noting(Note.refused(Words.say("nobody_here"))));
        }
        long unchecked = form.hoists().stream()
                .filter(hoist ->
                        hoist.checkedBy().isEmpty() && hoist.lockedOut().isEmpty())
                .count();
        String title = unchecked == 0 ? Words.say("ask.who_opens") : Words.say("ask.who_opens_unchecked", unchecked);
        return Turn.to(board.asking(new Overlay.Choose(title, choices, 0)));
    }

    private Turn show(OpenForm next) {
        return Turn.to(board.withoutNote().with(new Screen.Opening(next)));
    }
}
