package org.shedboard.estimate;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Mark;
import org.shedboard.shop.OwnersWord;

/**
 * What another record tells was found at a point in a past visit; it does not tell when in that visit.
 *
 * @param note what there is to say of it; of a point not reached, why
 * @param by id of the person who looked
 * @param asked what the owner said of having it fixed, once they were asked
 */
public record PastFinding(
        String pointId, Mark mark, OptionalDouble measured, String note, String by, Optional<Asked> asked) {
    /**
     * An owner's answer about a fix.
     *
     * @param workId the work that was offered
     * @param by id of the person who asked
     * @param of who was asked
     */
    public record Asked(OwnersWord.Answer answer, String workId, String by, String of) {}

    /** The same as found, and asked about, at this moment. */
    public Finding at(Instant moment) {
        return new Finding(
                pointId,
                mark,
                measured,
                note,
                by,
                moment,
                asked.map(each -> new OwnersWord(each.answer(), each.workId(), each.by(), each.of(), moment)));
    }
}
