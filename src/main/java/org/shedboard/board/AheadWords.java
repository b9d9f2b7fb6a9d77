package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.shedboard.ahead.Bay;
import org.shedboard.ahead.DayAhead;
import org.shedboard.ahead.Squeeze;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
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
                hours(ahead.people().booked()),
                hours(ahead.people().open())));
        if (ahead.carried() > 0) {
            parts.add(Words.say("ahead.carried", hours(ahead.carried())));
        }
        if (ahead.due().handsOn() > 0) {
            parts.add(Words.say("ahead.due", hours(ahead.due().handsOn())));
        }
        return String.join(" ", parts);
    }

    /** What a day is full of, with its hours. */
    public static List<String> full(DayAhead ahead) {
        List<String> full = new ArrayList<>();
        ahead.fullPlaces().forEach(squeeze -> full.add(hours(places(squeeze), squeeze)));
        ahead.fullPeople().forEach(squeeze -> full.add(hours(people(squeeze), squeeze)));
        return full;
    }

    private static String hours(String what, Squeeze<?> squeeze) {
        return Words.say("ahead.of_hours", what, hours(squeeze.booked()), hours(squeeze.open()));
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

    /** As a foreman says hours: to a tenth. */
    public static String hours(int minutes) {
        return String.format(Locale.ROOT, "%.1f", minutes / 60.0);
    }
}
