package org.shedboard.day;

import java.util.List;
import java.util.Optional;
import org.shedboard.hours.ClockEntry;

/**
 * Which acts somebody has to sign with their PIN: what cannot be undone by a key, and what others rely on later. All of them last:
 * nothing that was signed is taken back with less than a signature, since none of it is taken back at all.
 */
public final class Signing {
    private Signing() {}

    /**
     * Who has to sign an act: closing the day, the settings (rules for hours, which minutes are packed), another person's hours, what
     * is changed of a day that is closed, removing (one of two records, an owner), and minutes of the catalogue. Empty where
     * nobody has to.
     *
     * @param isClosed whether the day the act is about is closed
     * @param rows the rows of its hours
     */
    public static Optional<Signer> signerOf(Act act, boolean isClosed, List<ClockEntry> rows) {
        if (act instanceof Act.Correct correct) {
            return isClosed || isOfAnother(rows, correct)
                    ? Optional.of(new Signer.Named(correct.by()))
                    : Optional.empty();
        }
        if (act instanceof Act.MergeMachines || act instanceof Act.ForgetOwner) {
            return Optional.of(new Signer.Anybody());
        }
        return answerable(act)
                .<Signer>map(Signer.Named::new)
                .or(() -> isClosed && changesWhatWas(act) ? Optional.of(new Signer.Anybody()) : Optional.empty());
    }

    public static Optional<Signer> signerOf(Day day, Act act) {
        return signerOf(act, day.isClosed(), day.rows());
    }

    /** Who answers for an act that always has to be signed. */
    private static Optional<String> answerable(Act act) {
        if (act instanceof Act.CloseDay close) {
            return Optional.of(close.by());
        }
        if (act instanceof Act.SetHoursRules set) {
            return Optional.of(set.by());
        }
        if (act instanceof Act.SetPackedPercent set) {
            return Optional.of(set.by());
        }
        return act instanceof Act.AcceptFigure accept ? Optional.of(accept.by()) : Optional.empty();
    }

    /** What a day that is closed has of machines: who came and went, what was found and fitted, what is charged. */
    private static boolean changesWhatWas(Act act) {
        return act instanceof Act.TakeIn in && in.expected().isEmpty()
                || act instanceof Act.Arrive
                || act instanceof Act.Collect
                || act instanceof Act.Tick
                || act instanceof Act.FitPart
                || act instanceof Act.AgreeHours;
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
