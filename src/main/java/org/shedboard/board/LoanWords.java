package org.shedboard.board;

import java.time.Instant;
import java.time.LocalDate;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.register.Loan;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** What is said of a machine of ours that was lent: on the screen and by the commands alike. */
public final class LoanWords {
    private LoanWords() {}

    public static String of(Day day, Loan loan) {
        String owner = day.books().expectOwner(loan.ownerId()).name();
        String out = when(day, loan.out());
        return loan.back()
                .map(back -> Words.say("loan.back", loan.label(), owner, out, when(day, back)))
                .orElseGet(() -> Words.say("loan.out", loan.label(), owner, out));
    }

    private static String when(Day day, Instant at) {
        return Clocks.sayDate(LocalDate.ofInstant(at, day.zone())) + " " + When.CLOCK.say(day.timeOf(at));
    }
}
