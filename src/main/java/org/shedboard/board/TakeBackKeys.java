package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Overlay.Choice;
import org.shedboard.board.Overlay.Reply;
import org.shedboard.day.Act;
import org.shedboard.day.Acts;
import org.shedboard.day.Day;
import org.shedboard.day.Lasting;
import org.shedboard.day.Outcome;
import org.shedboard.day.Trace;
import org.shedboard.day.WhatIf;
import org.shedboard.words.Words;

/** The question before something is taken back, or done again: it says what that is and what comes of it. */
final class TakeBackKeys {
    /** So many acts that stay are named before the one that can be taken back. */
    private static final int MOST_NAMED = 3;

    private final Board board;
    private final Doings doings;
    private final DoingWords words;

    TakeBackKeys(Board board) {
        this.board = board;
        this.doings = board.doings();
        this.words =
                new DoingWords(board.expectDay(), board.seen().orElseThrow().tally());
    }

    static Binding binding(Board board) {
        Day day = board.expectDay();
        String why = day.isClosed() ? "off.day_closed" : board.saving() > 0 ? "off.still_saving" : "off.nothing_done";
        boolean can = !day.isClosed() && board.saving() == 0 && !board.doings().isEmpty();
        return Binding.when(can, 'z', Deed.TAKE_BACK, why);
    }

    /** Where nothing can be, the reason is said of what was done last. */
    Turn ask() {
        List<String> about = new ArrayList<>();
        List<Choice> choices = new ArrayList<>();
        Optional<Doings.Doing> back = newestToTakeBack();
        staying(back).stream().limit(MOST_NAMED).forEach(stays -> about.add(words.stays(stays, whyStays(stays))));
        back.ifPresent(doing -> {
            about.add(words.of(doing));
            about.addAll(words.outcome(doing.trace()));
            choices.add(choice('1', Words.say("undo.take_back"), "undo.why", doing));
        });
        last(doings.undone())
                .ifPresent(doing ->
                        choices.add(choice('2', Words.say("undo.do_again", words.of(doing)), "undo.why_again", doing)));
        return choices.isEmpty()
                ? Turn.to(board.noting(Note.refused(about.get(0))))
                : Turn.to(board.asking(new Overlay.Choose(Words.say("undo.title"), about, choices, 0)));
    }

    private Optional<Doings.Doing> newestToTakeBack() {
        return last(doings.done().stream()
                .filter(doing -> doing.lasting().isEmpty()
                        && refusal(act(doing, "undo.why")).isEmpty())
                .toList());
    }

    /** What was done after that, the newest first. */
    private List<Doings.Doing> staying(Optional<Doings.Doing> back) {
        List<Doings.Doing> newer = new ArrayList<>();
        for (int i = doings.done().size() - 1; i >= 0; i--) {
            if (back.equals(Optional.of(doings.done().get(i)))) {
                return newer;
            }
            newer.add(doings.done().get(i));
        }
        return newer;
    }

    private String whyStays(Doings.Doing doing) {
        return doing.lasting()
                .map(Words::say)
                .orElseGet(() -> refusal(act(doing, "undo.why")).orElse(""));
    }

    private Choice choice(char key, String label, String why, Doings.Doing doing) {
        Act act = act(doing, why);
        return new Choice(key, label, refusal(act), new Reply.Carry(act));
    }

    private Act act(Doings.Doing doing, String why) {
        return new Act.TakeBack(doing.trace(), board.who(), Words.say(why));
    }

    private Optional<String> refusal(Act act) {
        return Acts.apply(board.expectDay(), act, board.expectOutlook().at()) instanceof Outcome.Refused refused
                ? Optional.of(
                        Words.say(refused.refusal().name(), refused.refusal().values()))
                : Optional.empty();
    }

    private static <T> Optional<T> last(List<T> all) {
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** What is remembered of an act that is saved; a day that was closed is over. */
    static Board remembered(Board board, Act act, Trace trace, String sentence) {
        if (act instanceof Act.CloseDay) {
            return board.remembering(Doings.NONE);
        }
        if (act instanceof Act.TakeBack back) {
            return board.remembering(board.doings().after(back, trace));
        }
        return plus(board, sentence, trace, Lasting.of(act, trace));
    }

    /** What is remembered of a change that was tried and kept: all of it is taken back together. */
    static Board remembered(Board board, WhatIf whatIf, Trace trace, String sentence) {
        return plus(board, sentence, trace, Lasting.of(whatIf, trace));
    }

    private static Board plus(Board board, String sentence, Trace trace, Optional<Lasting> lasting) {
        Doings.Doing doing = new Doings.Doing(board.expectOutlook().at(), sentence, trace, lasting);
        return board.remembering(board.doings().plus(doing));
    }

    /** What is said when it is done: what was taken back, or what was done again. */
    static String done(Board board, Act.TakeBack act) {
        String name = board.doings().isDone(act) ? "undo.taken_back" : "undo.done_again";
        return board.doings()
                .meantBy(act)
                .map(doing -> Words.say(name, doing.sentence()))
                .orElseGet(() -> Words.say("done.TakeBack"));
    }
}
