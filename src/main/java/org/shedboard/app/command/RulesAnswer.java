package org.shedboard.app.command;

import java.util.Map;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.Rounding;
import org.shedboard.tally.TallyWords;

/** The rules by which hours are counted. */
final class RulesAnswer {
    private RulesAnswer() {}

    static Answer of(HoursRules rules) {
        return new Answer(TallyWords.rules(rules), tree(rules));
    }

    private static Map<String, Object> tree(HoursRules rules) {
        return new Tree()
                .put("attendance", rounding(rules.attendance()))
                .put("charge", rounding(rules.charge()))
                .put("basis", rules.basis())
                .put("restMinutes", rules.breaks().restMinutes())
                .put("mealMinutes", rules.breaks().mealMinutes())
                .put("plannedBreaks", rules.breaks().isPlannedTaken())
                .put("lentMinutes", rules.lentMinutes())
                .fields();
    }

    private static Map<String, Object> rounding(Rounding rounding) {
        return new Tree()
                .put("unit", rounding.unit())
                .put("goes", rounding.direction())
                .fields();
    }
}
