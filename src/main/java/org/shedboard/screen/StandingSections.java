package org.shedboard.screen;

import java.util.List;
import java.util.Optional;
import org.shedboard.board.LoanWords;
import org.shedboard.day.Day;
import org.shedboard.day.Notices;
import org.shedboard.estimate.Point;
import org.shedboard.grid.Style;
import org.shedboard.register.Carried;
import org.shedboard.register.History;
import org.shedboard.register.Loan;
import org.shedboard.report.FindingWords;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Machine;
import org.shedboard.words.Words;

/** What the page of a machine says of what stands open with it: findings taken home, makers' notices, machines of ours that were lent. */
final class StandingSections {
    private final Day day;
    private final Machine machine;
    private final Optional<History> history;

    StandingSections(Day day, Machine machine, Optional<History> history) {
        this.day = day;
        this.machine = machine;
        this.history = history;
    }

    /** Points that the machine's class has no more are left out. */
    Section tookHome() {
        Section section = Section.of(Words.say("machine.took_home"));
        for (Carried carried : day.books().register().carriedBy(machine.id())) {
            Finding finding = carried.finding();
            Optional<Point> point =
                    day.books().catalogue().expectClass(machine.classId()).findPoint(finding.pointId());
            if (point.isPresent()) {
                section = section.plus(said(point.get(), carried), finding.isFix() ? Style.DANGER : Style.QUIET);
            }
        }
        return section;
    }

    private String said(Point point, Carried carried) {
        String found = Words.say("machine.finding", point.name(), FindingWords.lastTime(day, point, carried));
        return carried.finding()
                .word()
                .map(word -> Words.say("machine.carried", found, FindingWords.word(day, word)))
                .orElse(found);
    }

    Section notices() {
        Section section = Section.of(Words.say("machine.notices"));
        for (Notices.Standing each : Notices.on(day, machine)) {
            section = section.plus(
                    Words.say(
                            "machine.notice." + each.state(),
                            each.notice().id(),
                            each.notice().title()),
                    styleOf(each.state()));
        }
        return section;
    }

    private static Style styleOf(Notices.State state) {
        return switch (state) {
            case OPEN, TO_CHECK -> Style.STRONG;
            case WANTED -> Style.NORMAL;
            case DONE -> Style.QUIET;
        };
    }

    /** What owners had of ours while it was here, or who had it where it is ours. */
    Section lent() {
        Section section = Section.of(Words.say("machine.lent"));
        List<Loan> loans = history.map(day.books().register()::loansAbout).orElse(List.of());
        for (Loan loan : loans) {
            section = section.plus(LoanWords.of(day, loan), loan.isOut() ? Style.STRONG : Style.QUIET);
        }
        return section;
    }
}
