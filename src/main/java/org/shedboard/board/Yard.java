package org.shedboard.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shedboard.day.Outlook;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** The machines the bay board lists: those with work left in planned order, then those that are done. */
public final class Yard {
    private Yard() {}

    public static List<Visit> of(Outlook outlook) {
        List<Visit> listed = new ArrayList<>(outlook.queue());
        outlook.day().visits().stream()
                .filter(visit -> visit.state() == VisitState.DONE)
                .sorted(Comparator.comparing(Visit::id))
                .forEach(listed::add);
        return listed;
    }
}
