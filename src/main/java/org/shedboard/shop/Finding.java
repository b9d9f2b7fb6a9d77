package org.shedboard.shop;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one person found at one inspection point of one visit.
 *
 * @param note what there is to say of it, as typed; of a point not reached, why
 * @param word what the owner said of having it fixed, once they were asked
 */
public record Finding(
        String pointId,
        Mark mark,
        OptionalDouble measured,
        String note,
        String by,
        Instant at,
        Optional<OwnersWord> word) {
    /** A finding of which the owner was not asked. */
    public Finding(String pointId, Mark mark, OptionalDouble measured, String note, String by, Instant at) {
        this(pointId, mark, measured, note, by, at, Optional.empty());
    }

    public Finding with(OwnersWord said) {
        return new Finding(pointId, mark, measured, note, by, at, Optional.of(said));
    }

    /** With another name in the place of whoever was asked. */
    public Finding unnamed(String instead) {
        return word.map(said -> with(said.unnamed(instead))).orElse(this);
    }

    /** Whether what is renewed when dirty has to be renewed. */
    public boolean isDirt() {
        return mark == Mark.WATCH || mark == Mark.FIX;
    }

    public boolean isFix() {
        return mark == Mark.FIX;
    }

    /** With what the owner said of the one before, while it is still so: the fix still stands, or was made with their yes. */
    public Finding after(Finding before) {
        boolean wanted = before.word()
                .filter(said -> said.answer() == OwnersWord.Answer.YES)
                .isPresent();
        boolean stays = word.isEmpty() && (isFix() || wanted);
        return stays ? new Finding(pointId, mark, measured, note, by, at, before.word()) : this;
    }
}
