package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.ahead.DayAhead;
import org.shedboard.ahead.Squeeze;
import org.shedboard.ahead.Weeks;
import org.shedboard.board.AheadWords;
import org.shedboard.day.Clocks;
import org.shedboard.day.Figures;
import org.shedboard.day.WeeksAhead;
import org.shedboard.files.Fields;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;
import org.shedboard.words.Words;

/** The weeks ahead, said: a line for each day, and what it is full of. */
final class WeeksAnswer {
    private final Weeks weeks;

    private WeeksAnswer(Weeks weeks) {
        this.weeks = weeks;
    }

    static Answer of(Seen seen) {
        WeeksAnswer answer = new WeeksAnswer(WeeksAhead.withDue(seen.day(), seen.now()));
        Tree tree = new Tree()
                .put("days", answer.weeks.days().stream().map(answer::tree).toList());
        return new Answer(answer.lines(), tree.fields());
    }

    private List<String> lines() {
        Table table = new Table("l" + "r".repeat(PlaceKind.values().length + Skill.values().length + 2));
        List<String> heading = new ArrayList<>(List.of(Words.say("ahead.day")));
        List.of(PlaceKind.values()).forEach(kind -> heading.add(Words.say(kind)));
        heading.add(Words.say("ahead.everybody"));
        heading.add(Words.say("ahead.due_column"));
        List.of(Skill.values()).forEach(skill -> heading.add(Words.say(skill)));
        table.row(heading.toArray(String[]::new));
        weeks.days().forEach(day -> table.row(row(day).toArray(String[]::new)));
        List<String> lines = new ArrayList<>(table.lines());
        weeks.days().stream()
                .filter(day -> !AheadWords.full(day).isEmpty())
                .forEach(day -> lines.add(Words.say(
                        "command.weeks.full", Clocks.sayDate(day.date()), String.join("; ", AheadWords.full(day)))));
        return lines;
    }

    private static List<String> row(DayAhead day) {
        List<String> row = new ArrayList<>(List.of(Clocks.sayDate(day.date())));
        for (PlaceKind kind : PlaceKind.values()) {
            row.add(hours(day.byKind().get(kind), day.open(kind)));
        }
        row.add(hours(day.people().booked(), day.people().open()));
        row.add(Figures.hours(day.due().handsOn()));
        for (Skill skill : Skill.values()) {
            row.add(hours(day.people().booked(skill), day.open(skill)));
        }
        return row;
    }

    private static String hours(int booked, int open) {
        return Figures.hours(booked) + "/" + Figures.hours(open);
    }

    private Map<String, Object> tree(DayAhead day) {
        Map<String, Object> places = new LinkedHashMap<>();
        for (PlaceKind kind : PlaceKind.values()) {
            int booked = day.byKind().get(kind);
            places.put(
                    Fields.nameOf(kind),
                    part(booked, day.due().of(kind), day.open(kind))
                            .put("full", day.isFull(kind))
                            .fields());
        }
        Map<String, Object> skills = new LinkedHashMap<>();
        for (Skill skill : Skill.values()) {
            int booked = day.people().booked(skill);
            skills.put(
                    Fields.nameOf(skill),
                    part(booked, day.due().of(skill), day.open(skill))
                            .put("full", day.isFull(skill))
                            .fields());
        }
        int booked = day.people().booked();
        List<Map<String, Object>> full = new ArrayList<>();
        day.fullPlaces().forEach(squeeze -> full.add(full(AheadWords.places(squeeze), squeeze)));
        day.fullPeople().forEach(squeeze -> full.add(full(AheadWords.people(squeeze), squeeze)));
        return new Tree()
                .put("date", day.date().toString())
                .put(
                        "people",
                        part(booked, day.due().handsOn(), day.people().open()).fields())
                .put("skills", skills)
                .put("places", places)
                .put("carriedMinutes", day.carried())
                .put("visits", day.visitIds())
                .put("full", full)
                .fields();
    }

    private static Tree part(int booked, int due, int open) {
        return new Tree().put("bookedMinutes", booked).put("dueMinutes", due).put("openMinutes", open);
    }

    private static Map<String, Object> full(String what, Squeeze<?> squeeze) {
        return new Tree()
                .put("of", what)
                .put("bookedMinutes", squeeze.booked())
                .put("openMinutes", squeeze.open())
                .fields();
    }
}
