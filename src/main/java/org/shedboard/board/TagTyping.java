package org.shedboard.board;

import java.util.Optional;
import org.shedboard.day.Names;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** Typing a tag's number leads to its machine, wherever digits mean nothing else. */
final class TagTyping {
    /** Key tags carry at most three digits; a fourth digit begins a new number. */
    private static final int DIGITS = 3;

    private final Board board;

    private TagTyping(Board board) {
        this.board = board;
    }

    /** Whether the key is a digit that this screen has no other use for. */
    static boolean isMeant(Board board, Key key) {
        return key.isCharacter()
                && key.character() >= '0'
                && key.character() <= '9'
                && board.seen().isPresent()
                && !(board.screen() instanceof Screen.Opening)
                && Keys.of(board).stream().noneMatch(binding -> isDigit(binding.key()));
    }

    private static boolean isDigit(Key key) {
        return key.isCharacter() && Character.isDigit(key.character());
    }

    static Turn typed(Board board, char digit) {
        return new TagTyping(board).typed(digit);
    }

    private Turn typed(char digit) {
        String before = board.atHand().tagTyped();
        String longer = before + digit;
        String tag = before.length() < DIGITS && find(longer).isPresent() ? longer : "" + digit;
        Board typed = board.typingTag(tag);
        return find(tag)
                .map(visit -> led(typed.noting(Note.done(found(visit))), visit))
                .orElseGet(() -> Turn.to(typed.noting(Note.refused(Words.say("tag.nobody", tag)))));
    }

    private String found(Visit visit) {
        return Words.say("tag.found", Names.of(board.expectDay(), visit));
    }

    /** Where machines are listed it is chosen; a page about one machine is then about this one; from elsewhere its sheet opens. */
    private static Turn led(Board board, Visit visit) {
        Screen screen = board.screen();
        if (screen instanceof Screen.Places places) {
            return Turn.to(board.with(places.select(visit.id())));
        }
        if (screen instanceof Screen.YardPage yard) {
            return Turn.to(board.with(yard.filtered(Typing.EMPTY).select(Optional.of(visit.id()))));
        }
        if (screen instanceof Screen.MachinePage) {
            return RegisterKeys.show(board, new Screen.MachinePage(visit.machineId()));
        }
        Screen sheet = new Screen.Sheet(visit.id(), Deeds.firstOpen(visit), 0);
        return Turn.to(screen instanceof Screen.Sheet ? board.with(sheet) : board.on(sheet));
    }

    private Optional<Visit> find(String tag) {
        return board.expectDay()
                .findByTag(Integer.parseInt(tag))
                .or(() -> board.expectDay().visits().stream()
                        .filter(visit -> visit.tag().isPresent())
                        .filter(visit -> String.valueOf(visit.tag().getAsInt()).startsWith(tag))
                        .findFirst());
    }
}
