package org.shedboard.board;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Window;
import org.shedboard.words.Words;

/** One's own shop being set up: what is typed so far. */
public record SetupForm(Field field, Map<Field, Typing> texts) {
    /** What is asked, in this order; lists are typed with commas. */
    public enum Field {
        NAME,
        FOREMAN,
        TECHNICIANS,
        APPRENTICES,
        WASH_PADS,
        HOISTS,
        BAYS,
        FROM,
        UNTIL
    }

    /** What an apprentice takes for a hundred catalogue minutes; invented, to be learnt from their work. */
    private static final int APPRENTICE_PACE = 140;

    private static final int MOST_PLACES = 12;

    public static final SetupForm USUAL = new SetupForm(
            Field.NAME,
            Map.of(
                    Field.WASH_PADS, Typing.of("1"),
                    Field.HOISTS, Typing.of("2500"),
                    Field.BAYS, Typing.of("2"),
                    Field.FROM, Typing.of("07:30"),
                    Field.UNTIL, Typing.of("16:30")));

    public SetupForm {
        texts = Map.copyOf(texts);
    }

    public Typing typing(Field of) {
        return texts.getOrDefault(of, Typing.EMPTY);
    }

    private String text(Field of) {
        return typing(of).text().strip();
    }

    SetupForm with(Typing typing) {
        Map<Field, Typing> next = new EnumMap<>(Field.class);
        next.putAll(texts);
        next.put(field, typing);
        return new SetupForm(field, next);
    }

    SetupForm moved(int by) {
        int index = Math.max(0, Math.min(Field.values().length - 1, field.ordinal() + by));
        return new SetupForm(Field.values()[index], texts);
    }

    boolean isAtEnd() {
        return field == Field.UNTIL;
    }

    /** The first thing that is missing or cannot be read, as a sentence. */
    Optional<String> fault() {
        if (text(Field.NAME).isEmpty()) {
            return Optional.of(Words.say("setup.name_missing"));
        }
        if (text(Field.FOREMAN).isEmpty()) {
            return Optional.of(Words.say("setup.foreman_missing"));
        }
        for (Field count : List.of(Field.WASH_PADS, Field.BAYS)) {
            if (!text(count).matches("\\d{1,2}") || Integer.parseInt(text(count)) > MOST_PLACES) {
                return Optional.of(Words.say("setup.count_unread", text(count), MOST_PLACES));
            }
        }
        for (String load : items(Field.HOISTS)) {
            if (!load.matches("[1-9]\\d{1,5}")) {
                return Optional.of(Words.say("setup.load_unread", load));
            }
        }
        Optional<LocalTime> from = Times.time(text(Field.FROM));
        Optional<LocalTime> until = Times.time(text(Field.UNTIL));
        if (from.isEmpty() || until.isEmpty() || !from.get().isBefore(until.get())) {
            return Optional.of(Words.say("setup.hours_unread"));
        }
        return Optional.empty();
    }

    /** The shop this makes, in that zone; only where there is no {@link #fault}. */
    Shop shop(ZoneId zone) {
        return new Shop(text(Field.NAME), zone, EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), places(), people());
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (int i = 1; i <= Integer.parseInt(text(Field.WASH_PADS)); i++) {
            places.add(new Place("W" + i, Words.say("setup.wash_pad", i), PlaceKind.WASH, Place.NO_LIMIT));
        }
        int hoist = 1;
        for (String load : items(Field.HOISTS)) {
            places.add(
                    new Place("H" + hoist, Words.say("setup.hoist", hoist), PlaceKind.HOIST, Integer.parseInt(load)));
            hoist++;
        }
        for (int i = 1; i <= Integer.parseInt(text(Field.BAYS)); i++) {
            places.add(new Place("F" + i, Words.say("setup.bay", i), PlaceKind.FLOOR, Place.NO_LIMIT));
        }
        return places;
    }

    private List<Person> people() {
        List<Person> people = new ArrayList<>();
        people.add(person(people, text(Field.FOREMAN), "setup.foreman", EnumSet.allOf(Skill.class), 100));
        for (String name : items(Field.TECHNICIANS)) {
            people.add(person(people, name, "setup.technician", EnumSet.allOf(Skill.class), 100));
        }
        Set<Skill> learnt = EnumSet.of(Skill.WASH, Skill.HOIST, Skill.SERVICE);
        for (String name : items(Field.APPRENTICES)) {
            people.add(person(people, name, "setup.apprentice", learnt, APPRENTICE_PACE));
        }
        return people;
    }

    private Person person(List<Person> before, String name, String role, Set<Skill> skills, int pace) {
        LocalTime from = Times.time(text(Field.FROM)).orElseThrow();
        LocalTime until = Times.time(text(Field.UNTIL)).orElseThrow();
        return new Person(
                "P" + (before.size() + 1), name, Words.say(role), skills, pace, shifts(from, until), List.of());
    }

    /** The day in one piece, or in two around half an hour's dinner at noon where that lies well inside it. */
    private static List<Window> shifts(LocalTime from, LocalTime until) {
        LocalTime noon = LocalTime.NOON;
        LocalTime back = noon.plusMinutes(30);
        return from.isBefore(noon) && until.isAfter(back)
                ? List.of(new Window(from, noon), new Window(back, until))
                : List.of(new Window(from, until));
    }

    private List<String> items(Field field) {
        return Stream.of(text(field).split(","))
                .map(String::strip)
                .filter(item -> !item.isEmpty())
                .toList();
    }
}
