package org.shedboard.app.command;

import java.time.LocalDate;
import org.shedboard.day.Day;
import org.shedboard.register.NextDue;

/** What is due next on a machine, as fields of its JSON. */
final class DueFields {
    private DueFields() {}

    /** The tree with what is due, by what and when. */
    static Tree onto(Tree tree, Day day, NextDue due, LocalDate today) {
        return tree.put("work", due.workId())
                .put("name", day.books().catalogue().expectWork(due.workId()).name())
                .put("by", due.by())
                .put("dueAt", due.dial().map(dial -> tenths(dial.due())))
                .put("meterNow", due.dial().map(dial -> tenths(dial.now())))
                .put("early", due.dates().early().toString())
                .put("likely", due.dates().likely().toString())
                .put("late", due.dates().late().toString())
                .put("daysLeft", due.daysLeft(today))
                .put("state", due.on(today));
    }

    private static double tenths(double value) {
        return Math.round(10 * value) / 10.0;
    }
}
