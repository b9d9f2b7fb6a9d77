package org.shedboard.screen;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.shedboard.day.Act;
import org.shedboard.day.Acts;
import org.shedboard.day.Beginning;
import org.shedboard.day.Day;
import org.shedboard.day.Outcome;
import org.shedboard.day.Planning;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Work;
import org.shedboard.files.Seed;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Window;

/**
 * Shops as nobody would draw them by hand: full and empty ones, with names from everywhere, on days on which the clocks change. No
 * name has a digit in it, so that every digit on a screen is of a number that the program says.
 */
final class RandomShops {
    private static final Catalogue CATALOGUE = Seed.catalogue();
    private static final int MOST_PEOPLE = 12;
    private static final int MOST_VISITS = 40;
    private static final int LONGEST_NAME = 60;

    /** A zone with a day on which its clocks go forward or back. */
    private enum Change {
        BERLIN_SPRING("Europe/Berlin", 2026, 3, 29),
        BERLIN_AUTUMN("Europe/Berlin", 2026, 10, 25),
        BY_HALF_AN_HOUR("Australia/Lord_Howe", 2026, 10, 4),
        AT_MIDNIGHT("Africa/Cairo", 2026, 4, 24),
        NONE("Asia/Kathmandu", 2026, 12, 31);

        private final ZoneId zone;
        private final LocalDate date;

        Change(String zone, int year, int month, int day) {
            this.zone = ZoneId.of(zone);
            this.date = LocalDate.of(year, month, day);
        }
    }

    private static final List<String> PIECES = List.of(
            "Ash",
            "Wren",
            "o'",
            "重機",
            "整備工場",
            "한국",
            "ﾊﾝｶｸ",
            "e\u0301\u0323",
            "a\u20dd",
            "\u05e9\u05dc\u05d5\u05dd",
            "\u0645\u0631\u062d\u0628\u0627",
            "\u202eback",
            "\u0007bell",
            "\u001b[J",
            "\t",
            "\n",
            "\ud83d\ude9c",
            "\ud83d",
            "ß",
            "|",
            "{",
            "'",
            "%",
            "…",
            "Quillgatebridgewaterstonemarsh");

    private final Random random;

    RandomShops(Random random) {
        this.random = random;
    }

    /** A day in a shop, and the moment at which it is looked at. */
    record Morning(Day day, Instant now) {}

    Morning next() {
        Change change = any(Change.values());
        LocalDate date = change.date.minusDays(random.nextInt(3));
        Setup setup = new Setup(shop(change.zone), owners(), machines(), List.of(), Optional.empty());
        Day day = Beginning.of(CATALOGUE, setup, date).day();
        Instant now = date.atTime(7, 0).atZone(change.zone).toInstant().plusSeconds(60L * random.nextInt(600));
        return new Morning(random.nextInt(5) == 0 ? visited(day, now) : opened(visited(day, now), now), now);
    }

    private Shop shop(ZoneId zone) {
        List<Person> people = new ArrayList<>();
        int count = random.nextInt(3) == 0 ? MOST_PEOPLE : 1 + random.nextInt(MOST_PEOPLE);
        for (int i = 1; i <= count; i++) {
            people.add(person(i));
        }
        Set<DayOfWeek> workdays = random.nextBoolean()
                ? EnumSet.allOf(DayOfWeek.class)
                : EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
        return new Shop(name(), zone, workdays, places(), people);
    }

    private Person person(int number) {
        List<Skill> skills = new ArrayList<>(List.of(Skill.values()));
        if (number > 1) {
            skills.removeIf(skill -> random.nextInt(3) == 0);
        }
        return new Person(
                "P" + number,
                name(),
                name(),
                Set.copyOf(skills),
                any(new Integer[] {70, 100, 140}),
                shifts(),
                List.of());
    }

    private List<Window> shifts() {
        return switch (random.nextInt(4)) {
            case 0 -> List.of(new Window(LocalTime.of(14, 0), LocalTime.of(23, 59)));
            case 1 -> List.of(new Window(LocalTime.MIDNIGHT, LocalTime.of(7, 45)));
            default ->
                List.of(
                        new Window(LocalTime.of(7, 0), LocalTime.of(9, 30)),
                        new Window(LocalTime.of(9, 45), LocalTime.of(12, 0)),
                        new Window(LocalTime.of(12, 30), LocalTime.of(16, 30)));
        };
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        add(places, PlaceKind.WASH, "W", random.nextInt(3));
        add(places, PlaceKind.HOIST, "H", random.nextInt(4));
        add(places, PlaceKind.FLOOR, "F", 1 + random.nextInt(4));
        return places;
    }

    private void add(List<Place> places, PlaceKind kind, String letter, int count) {
        for (int i = 1; i <= count; i++) {
            int rated = kind == PlaceKind.HOIST ? 400 * (1 + random.nextInt(10)) : Place.NO_LIMIT;
            places.add(new Place(letter + i, name(), kind, rated));
        }
    }

    private List<Owner> owners() {
        List<Owner> owners = new ArrayList<>();
        for (int i = 1; i <= MOST_VISITS; i++) {
            owners.add(new Owner("O" + i, name(), random.nextBoolean() ? "" : name(), random.nextInt(8) == 0));
        }
        return owners;
    }

    private List<Machine> machines() {
        List<Machine> machines = new ArrayList<>();
        for (int i = 1; i <= MOST_VISITS; i++) {
            MachineClass of = any(CATALOGUE.classes());
            OptionalInt hours = random.nextBoolean() ? OptionalInt.of(random.nextInt(100_000)) : OptionalInt.empty();
            machines.add(new Machine(
                    "M" + i,
                    "O" + i,
                    of.id(),
                    name(),
                    OptionalInt.of(2000 + random.nextInt(30)),
                    "",
                    of.massKg(),
                    hours));
        }
        return machines;
    }

    private Day visited(Day day, Instant now) {
        Day next = day;
        int visits = any(new Integer[] {0, 1, 6, 20, MOST_VISITS});
        for (int i = 1; i <= visits; i++) {
            if (Acts.apply(next, takeIn(next, "M" + i, now), now) instanceof Outcome.Done done) {
                next = done.day();
            }
        }
        return next;
    }

    private Act takeIn(Day day, String machineId, Instant now) {
        List<Work> works =
                CATALOGUE.worksFor(day.books().expectMachine(machineId).classId());
        Optional<Instant> expected = random.nextInt(4) == 0 ? Optional.of(later(now)) : Optional.empty();
        Optional<Act.TakeIn.Said> said =
                random.nextBoolean() ? Optional.of(new Act.TakeIn.Said(later(now), "P1", name())) : Optional.empty();
        boolean isNumbered = expected.isEmpty() && random.nextInt(3) == 0;
        return new Act.TakeIn(
                new Act.TakeIn.Whose(Optional.empty(), "", ""),
                Act.TakeIn.Which.known(machineId),
                any(Mud.values()),
                random.nextBoolean() ? Optional.of(any(Depth.values())) : Optional.empty(),
                new Condition(random.nextInt(4) > 0, true, true, true),
                List.of(new Act.Wanted(any(works).id(), any(Payer.values()))),
                isNumbered ? OptionalInt.of(100 + random.nextInt(900)) : OptionalInt.empty(),
                OptionalInt.empty(),
                expected,
                name(),
                said);
    }

    /** Everybody is here, and most hoists are sound. */
    private Day opened(Day day, Instant now) {
        List<Act.OpenDay.Here> here = day.shop().people().stream()
                .map(person ->
                        new Act.OpenDay.Here(person.id(), at(day, person.startsAt()), at(day, person.knockOff())))
                .toList();
        List<Act.OpenDay.Checked> checks = day.shop().hoists().stream()
                .filter(hoist -> random.nextInt(4) > 0)
                .map(hoist -> new Act.OpenDay.Checked(hoist.id(), "P1", Optional.empty()))
                .toList();
        return ((Outcome.Done) Planning.carryOut(day, new Act.OpenDay("P1", here, checks), now)).day();
    }

    private static Instant at(Day day, LocalTime time) {
        return day.date().atTime(time).atZone(day.zone()).toInstant();
    }

    private Instant later(Instant now) {
        return now.plusSeconds(60L * random.nextInt(random.nextInt(4) == 0 ? 10_000 : 500));
    }

    /** At least one letter, and at most {@link #LONGEST_NAME} characters. */
    String name() {
        StringBuilder name = new StringBuilder();
        int pieces = random.nextInt(6) == 0 ? 12 : 1 + random.nextInt(3);
        for (int i = 0; i < pieces; i++) {
            name.append(any(PIECES)).append(random.nextBoolean() ? " " : "");
        }
        String whole = "A" + name.toString().strip();
        return whole.substring(0, Math.min(LONGEST_NAME, whole.length()));
    }

    <T> T any(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    <T> T any(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
