package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shedboard.ahead.Bay;
import org.shedboard.ahead.DayAhead;
import org.shedboard.ahead.Squeeze;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Figures;
import org.shedboard.day.Names;
import org.shedboard.shop.Skill;
import org.shedboard.words.Words;

/** The sentences about a day to come: on the screen and by the commands alike. */
public final class AheadWords {
    private AheadWords() {}

    /** All there is to say of a day, most important first. */
    public static List<String> of(Day day, DayAhead ahead) {
        List<String> lines = new ArrayList<>();
        lines.add(summary(ahead));
        List<String> full = full(ahead);
        if (!full.isEmpty()) {
            lines.add(Words.say("ahead.full", String.join("; ", full)));
        }
        if (!ahead.visitIds().isEmpty()) {
            lines.add(Words.say(
                    "ahead.visits",
                    ahead.visitIds().stream()
                            .map(id -> Names.of(day, day.expectVisit(id)))
                            .collect(Collectors.joining("; "))));
        }
        return lines;
    }

    private static String summary(DayAhead ahead) {
        List<String> parts = new ArrayList<>();
        parts.add(Words.say(
                "ahead.summary",
                Clocks.sayDate(ahead.date()),
                Figures.hours(ahead.people().booked()),
                Figures.hours(ahead.people().open())));
        if (ahead.carried() > 0) {
            parts.add(Words.say("ahead.carried", Figures.hours(ahead.carried())));
        }
        if (ahead.due().handsOn() > 0) {
            parts.add(Words.say("ahead.due", Figures.hours(ahead.due().handsOn())));
        }
        return String.join(" ", parts);
    }

    /** What a day is full of, with its hours. */
    public static List<String> full(DayAhead ahead) {
        List<String> full = new ArrayList<>();
        ahead.fullPlaces().forEach(squeeze -> full.add(ofHours(places(squeeze), squeeze)));
        ahead.fullPeople().forEach(squeeze -> full.add(ofHours(people(squeeze), squeeze)));
        return full;
    }

    private static String ofHours(String what, Squeeze<?> squeeze) {
        return Words.say("ahead.of_hours", what, Figures.hours(squeeze.booked()), Figures.hours(squeeze.open()));
    }

    public static String places(Squeeze<Bay> squeeze) {
        return squeeze.what().stream()
                .flatMap(bay -> bay.only().isEmpty() ? bay.kinds().stream().map(Words::say) : bay.only().stream())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    public static String people(Squeeze<Skill> squeeze) {
        return squeeze.isEverybody()
                ? Words.say("ahead.everybody")
                : Words.say(
                        "ahead.people_for",
                        squeeze.what().stream().map(Words::say).collect(Collectors.joining(", ")));
    }
}
