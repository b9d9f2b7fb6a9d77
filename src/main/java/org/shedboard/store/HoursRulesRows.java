package org.shedboard.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.shedboard.hours.BreakRule;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.Rounding;

/** How the shop counts its hours, as named texts in the table setting; what is not there is as usual. */
final class HoursRulesRows {
    private static final String ATTENDANCE = "hours.attendance";
    private static final String CHARGE = "hours.charge";
    private static final String BASIS = "hours.basis";
    private static final String REST = "hours.restMinutes";
    private static final String MEAL = "hours.mealMinutes";
    private static final String PLANNED = "hours.plannedBreaksTaken";
    private static final String LENT = "hours.lentMinutes";

    private HoursRulesRows() {}

    static HoursRules find(Sql sql) {
        return of(SettingRows.all(sql));
    }

    private static HoursRules of(Map<String, String> texts) {
        HoursRules usual = HoursRules.USUAL;
        BreakRule breaks = usual.breaks();
        return new HoursRules(
                rounding(texts, ATTENDANCE).orElse(usual.attendance()),
                rounding(texts, CHARGE).orElse(usual.charge()),
                find(texts, BASIS).map(HoursRules.Basis::valueOf).orElse(usual.basis()),
                new BreakRule(
                        find(texts, REST).map(Integer::valueOf).orElse(breaks.restMinutes()),
                        find(texts, MEAL).map(Integer::valueOf).orElse(breaks.mealMinutes()),
                        find(texts, PLANNED).map(Boolean::valueOf).orElse(breaks.isPlannedTaken())),
                find(texts, LENT).map(Integer::valueOf).orElse(usual.lentMinutes()));
    }

    private static Optional<String> find(Map<String, String> texts, String name) {
        return Optional.ofNullable(texts.get(name));
    }

    /** Unit and direction, with a blank between them. */
    private static Optional<Rounding> rounding(Map<String, String> texts, String name) {
        return find(texts, name)
                .map(text -> text.split(" "))
                .map(parts -> new Rounding(Rounding.Unit.valueOf(parts[0]), Rounding.Direction.valueOf(parts[1])));
    }

    static Share share(HoursRules rules) {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put(ATTENDANCE, text(rules.attendance()));
        texts.put(CHARGE, text(rules.charge()));
        texts.put(BASIS, rules.basis().name());
        texts.put(REST, String.valueOf(rules.breaks().restMinutes()));
        texts.put(MEAL, String.valueOf(rules.breaks().mealMinutes()));
        texts.put(PLANNED, String.valueOf(rules.breaks().isPlannedTaken()));
        texts.put(LENT, String.valueOf(rules.lentMinutes()));
        return SettingRows.share(texts);
    }

    private static String text(Rounding rounding) {
        return rounding.unit() + " " + rounding.direction();
    }
}
