package org.shedboard.board;

import java.util.Optional;
import org.shedboard.shop.Visit;

/** Typing a tag's number on the bay board selects its machine. */
final class TagTyping {
    /** Key tags carry at most three digits; a fourth digit begins a new number. */
    private static final int DIGITS = 3;

    private TagTyping() {}

    static Board typed(Board board, Screen.Places places, char digit) {
        String longer = places.tagTyped() + digit;
        String tag = places.tagTyped().length() < DIGITS && find(board, longer).isPresent() ? longer : "" + digit;
        Optional<Visit> visit = find(board, tag);
        return board.with(new Screen.Places(visit.map(Visit::id).or(places::selected), tag));
    }

    private static Optional<Visit> find(Board board, String tag) {
        return board.expectDay()
                .findByTag(Integer.parseInt(tag))
                .or(() -> board.expectDay().visits().stream()
                        .filter(visit -> visit.tag().isPresent())
                        .filter(visit -> String.valueOf(visit.tag().getAsInt()).startsWith(tag))
                        .findFirst());
    }
}
