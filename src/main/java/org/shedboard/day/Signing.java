package org.shedboard.day;

import java.util.List;
import java.util.Optional;
import org.shedboard.hours.ClockEntry;

/** Which acts somebody has to sign with their PIN. */
public final class Signing {
    private Signing() {}

    /**
     * Id of the person whose PIN an act needs: of whoever closes the day, sets the rules for hours, or corrects another person's
     * hours or those of a day that is closed. Empty where none is needed.
     *
     * @param isClosed whether the day the act is about is closed
     * @param rows the rows of its hours
     */
    public static Optional<String> signerOf(Act act, boolean isClosed, List<ClockEntry> rows) {
        if (act instanceof Act.CloseDay close) {
            return Optional.of(close.by());
        }
        if (act instanceof Act.SetHoursRules set) {
            return Optional.of(set.by());
        }
        if (act instanceof Act.Correct correct) {
            return isClosed || isOfAnother(rows, correct) ? Optional.of(correct.by()) : Optional.empty();
        }
        return Optional.empty();
    }

    public static Optional<String> signerOf(Day day, Act act) {
        return signerOf(act, day.isClosed(), day.rows());
    }

    private static boolean isOfAnother(List<ClockEntry> rows, Act.Correct correct) {
        boolean writesForAnother = correct.right()
                .filter(right -> !right.personId().equals(correct.by()))
                .isPresent();
        boolean takesFromAnother = rows.stream()
                .filter(row -> correct.replaces().equals(Optional.of(row.id())))
                .map(ClockEntry::personId)
                .anyMatch(person -> !person.equals(correct.by()));
        return writesForAnother || takesFromAnother;
    }
}
