package org.shedboard.board;

import java.time.Instant;
import java.util.Optional;

/**
 * What a terminal is in the middle of, whatever screen it shows.
 *
 * @param saving how many acts are on their way to the database
 * @param draft a machine half taken in when the form was left
 * @param lastKey when the last key was pressed
 * @param pasting whether what comes was pasted, not typed
 * @param tagTyped the digits of a tag typed so far
 * @param sight which part of time the places and the crew are shown in
 * @param doings what was done here and can be taken back
 * @param deciding what its user is making up their mind about
 */
public record AtHand(
        int saving,
        Optional<TakeInForm> draft,
        Instant lastKey,
        boolean pasting,
        String tagTyped,
        Sight sight,
        Doings doings,
        Deciding deciding) {
    static final AtHand NOTHING =
            new AtHand(0, Optional.empty(), Instant.EPOCH, false, "", Sight.USUAL, Doings.NONE, Deciding.NOTHING);

    AtHand saving(int change) {
        return new AtHand(Math.max(0, saving + change), draft, lastKey, pasting, tagTyped, sight, doings, deciding);
    }

    AtHand keeping(Optional<TakeInForm> form) {
        return new AtHand(saving, form, lastKey, pasting, tagTyped, sight, doings, deciding);
    }

    AtHand pressedAt(Instant at) {
        return new AtHand(saving, draft, at, pasting, tagTyped, sight, doings, deciding);
    }

    AtHand pasting(boolean now) {
        return new AtHand(saving, draft, lastKey, now, tagTyped, sight, doings, deciding);
    }

    AtHand seeing(Sight next) {
        return new AtHand(saving, draft, lastKey, pasting, tagTyped, next, doings, deciding);
    }

    AtHand typingTag(String digits) {
        return new AtHand(saving, draft, lastKey, pasting, digits, sight, doings, deciding);
    }

    AtHand remembering(Doings next) {
        return new AtHand(saving, draft, lastKey, pasting, tagTyped, sight, next, deciding);
    }

    AtHand deciding(Deciding next) {
        return new AtHand(saving, draft, lastKey, pasting, tagTyped, sight, doings, next);
    }
}
