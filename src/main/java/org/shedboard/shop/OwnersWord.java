package org.shedboard.shop;

import java.time.Instant;

/**
 * What an owner said when asked about a fix that was found.
 *
 * @param workId the work that was offered
 * @param by id of the person who asked
 * @param of who was asked, as typed
 */
public record OwnersWord(Answer answer, String workId, String by, String of, Instant at) {
    OwnersWord unnamed(String instead) {
        return new OwnersWord(answer, workId, by, instead, at);
    }

    /** What the owner wants; later means that they have not been reached yet, or want to think. */
    public enum Answer {
        YES,
        NO,
        LATER
    }
}
