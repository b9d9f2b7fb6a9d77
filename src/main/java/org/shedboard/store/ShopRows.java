package org.shedboard.store;

import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Window;

/** The workshop itself in the tables shop, workday, place, person, person_skill and person_window. */
final class ShopRows {
    private static final Table SHOP =
            Table.named("shop").number("id").text("name", "zone").keyed("id");
    private static final Table WORKDAY = Table.named("workday").text("weekday").keyed("weekday");
    private static final Table PLACE = Table.named("place")
            .text("id")
            .number("ordinal")
            .text("name", "kind")
            .number("rated_kg")
            .keyed("id");
    private static final Table PERSON = Table.named("person")
            .text("id")
            .number("ordinal")
            .text("name", "role")
            .number("pace_percent")
            .keyed("id");
    private static final Table SKILL =
            Table.named("person_skill").text("person_id", "skill").keyed("person_id", "skill");
    private static final Table WINDOW = Table.named("person_window")
            .text("person_id")
            .number("ordinal")
            .flag("overtime")
            .time("from_time", "to_time")
            .keyed("person_id", "ordinal");

    private ShopRows() {}

    static Optional<Shop> find(Sql sql) {
        return sql.select(SHOP, "").stream().findFirst().map(row -> row.map(shop -> read(sql, shop)));
    }

    private static Shop read(Sql sql, Cells shop) {
        return new Shop(
                shop.text("name"), ZoneId.of(shop.text("zone")), readWorkdays(sql), readPlaces(sql), readPeople(sql));
    }

    private static Set<DayOfWeek> readWorkdays(Sql sql) {
        return sql.select(WORKDAY, "").stream()
                .map(row -> row.map(workday -> workday.one(DayOfWeek.class, "weekday")))
                .collect(Collectors.toSet());
    }

    private static List<Place> readPlaces(Sql sql) {
        return sql.select(PLACE, "ORDER BY ordinal").stream()
                .map(row -> row.map(ShopRows::toPlace))
                .toList();
    }

    private static Place toPlace(Cells place) {
        return new Place(
                place.text("id"),
                place.text("name"),
                place.one(PlaceKind.class, "kind"),
                place.findNumber("rated_kg").orElse(Place.NO_LIMIT));
    }

    private static List<Person> readPeople(Sql sql) {
        Children skills = Children.of(sql.select(SKILL, ""), "person_id");
        Children windows = Children.of(sql.select(WINDOW, "ORDER BY person_id, ordinal"), "person_id");
        return sql.select(PERSON, "ORDER BY ordinal").stream()
                .map(row -> row.map(person -> toPerson(person, skills, windows)))
                .toList();
    }

    private static Person toPerson(Cells person, Children skills, Children windows) {
        String id = person.text("id");
        return new Person(
                id,
                person.text("name"),
                person.text("role"),
                Set.copyOf(skills.map(id, skill -> skill.one(Skill.class, "skill"))),
                person.number("pace_percent"),
                toWindows(windows.of(id), false),
                toWindows(windows.of(id), true));
    }

    private static List<Window> toWindows(List<Cells> windows, boolean overtime) {
        return windows.stream()
                .filter(window -> window.flag("overtime") == overtime)
                .map(row -> row.map(window -> new Window(window.time("from_time"), window.time("to_time"))))
                .toList();
    }

    static List<Share> shares(Shop shop) {
        Cells itself = Cells.in(SHOP).set("id", 1).set("name", shop.name()).set("zone", shop.zone());
        return List.of(
                Share.whole(SHOP, List.of(itself)),
                Share.whole(WORKDAY, workdays(shop)),
                Share.whole(PLACE, places(shop)),
                Share.whole(PERSON, people(shop)),
                Share.whole(SKILL, skills(shop)),
                Share.whole(WINDOW, windows(shop)));
    }

    private static List<Cells> workdays(Shop shop) {
        return shop.workdays().stream()
                .sorted()
                .map(weekday -> Cells.in(WORKDAY).set("weekday", weekday))
                .toList();
    }

    private static List<Cells> places(Shop shop) {
        List<Cells> rows = new ArrayList<>();
        for (Place place : shop.places()) {
            boolean isLimited = place.ratedKg() != Place.NO_LIMIT;
            rows.add(Cells.in(PLACE)
                    .set("id", place.id())
                    .set("ordinal", rows.size())
                    .set("name", place.name())
                    .set("kind", place.kind())
                    .set("rated_kg", isLimited ? OptionalInt.of(place.ratedKg()) : OptionalInt.empty()));
        }
        return rows;
    }

    private static List<Cells> people(Shop shop) {
        List<Cells> rows = new ArrayList<>();
        for (Person person : shop.people()) {
            rows.add(Cells.in(PERSON)
                    .set("id", person.id())
                    .set("ordinal", rows.size())
                    .set("name", person.name())
                    .set("role", person.role())
                    .set("pace_percent", person.pacePercent()));
        }
        return rows;
    }

    private static List<Cells> skills(Shop shop) {
        List<Cells> rows = new ArrayList<>();
        for (Person person : shop.people()) {
            for (Skill skill : EnumSet.allOf(Skill.class)) {
                if (person.may(skill)) {
                    rows.add(Cells.in(SKILL).set("person_id", person.id()).set("skill", skill));
                }
            }
        }
        return rows;
    }

    private static List<Cells> windows(Shop shop) {
        List<Cells> rows = new ArrayList<>();
        for (Person person : shop.people()) {
            List<Window> all = new ArrayList<>(person.shifts());
            all.addAll(person.overtime());
            for (int i = 0; i < all.size(); i++) {
                rows.add(Cells.in(WINDOW)
                        .set("person_id", person.id())
                        .set("ordinal", i)
                        .set("overtime", i >= person.shifts().size())
                        .set("from_time", all.get(i).from())
                        .set("to_time", all.get(i).to()));
            }
        }
        return rows;
    }
}
