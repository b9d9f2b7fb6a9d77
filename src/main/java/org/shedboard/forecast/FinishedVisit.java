package org.shedboard.forecast;

import java.util.List;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Lesson;

/**
 * A finished visit as its lessons tell it.
 *
 * @param under what its work was done under
 * @param catalogueMinutes by the catalogue of today, at the pace of who did it
 * @param actualMinutes all people together
 */
public record FinishedVisit(String visitId, Circumstances under, double catalogueMinutes, double actualMinutes) {
    /** @param lessons all of one visit, at least one */
    static FinishedVisit of(List<Lesson> lessons) {
        Lesson any = lessons.get(0);
        return new FinishedVisit(
                any.visitId(),
                any.circumstances(),
                lessons.stream().mapToDouble(Lesson::catalogueMinutes).sum(),
                lessons.stream().mapToDouble(Lesson::actualMinutes).sum());
    }
}
