package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Spreads;
import org.shedboard.estimate.Usual;
import org.shedboard.estimate.Work;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.HoursRules;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Owner;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.Window;
import org.shedboard.shop.WorkKind;

/**
 * A small invented shop on one Tuesday: a wash pad, a light and a heavy hoist, one floor bay; Ada, Bo and the apprentice Cy; three
 * quads and a tractor; an oil change, and brakes that somebody else must check.
 */
public final class Shed {
    static final LocalDate DATE = LocalDate.of(2026, 5, 12);
    static final ZoneId ZONE = ZoneId.of("Pacific/Auckland");
    public static final Mud CLEAN = Mud.CLEAN;

    private Day day;
    private Instant now;

    private Shed(Day day) {
        this.day = day;
        this.now = time("07:00");
    }

    /** Nobody has opened the day yet. */
    public static Shed closed() {
        return of(Shed.ada(), bo(), cy());
    }

    /** Everybody is here until four and both hoists are checked. */
    public static Shed open() {
        Shed shed = closed();
        shed.does(shed.openDay());
        return shed;
    }

    /** Ada works alone. */
    public static Shed adasOwn() {
        Shed shed = of(ada());
        shed.does(new Act.OpenDay("ada", List.of(here("ada", "07:00", "16:00")), shed.bothChecked()));
        return shed;
    }

    private static Shed of(Person... people) {
        Shop shop = new Shop(
                "The shed", ZONE, EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), places(), List.of(people));
        List<Machine> machines = List.of(
                machine("quad-1", "quad", 300),
                machine("quad-2", "quad", 300),
                machine("quad-3", "quad", 300),
                machine("tractor-1", "tractor", 1500));
        Books books = new Books(
                shop, catalogue(), List.of(new Owner("O-a", "Tarn", "0000 1")), machines, HoursRules.USUAL, Set.of());
        return new Shed(Day.blank(books, DATE));
    }

    private static Machine machine(String id, String classId, int massKg) {
        return new Machine(id, "O-a", classId, id, OptionalInt.empty(), "", massKg, OptionalInt.empty());
    }

    private static List<Place> places() {
        return List.of(
                new Place("W", "wash pad", PlaceKind.WASH, Place.NO_LIMIT),
                new Place("H1", "light hoist", PlaceKind.HOIST, 500),
                new Place("H2", "heavy hoist", PlaceKind.HOIST, 2000),
                new Place("F", "floor bay", PlaceKind.FLOOR, Place.NO_LIMIT));
    }

    private static Person ada() {
        return person("ada", "Ada", EnumSet.allOf(Skill.class), 100);
    }

    private static Person bo() {
        return person("bo", "Bo", EnumSet.allOf(Skill.class), 100);
    }

    private static Person cy() {
        return person("cy", "Cy", EnumSet.of(Skill.WASH, Skill.HOIST, Skill.SERVICE), 150);
    }

    private static Person person(String id, String name, Set<Skill> skills, int pace) {
        return new Person(
                id,
                name,
                "",
                skills,
                pace,
                List.of(hours("07:00", "12:00"), hours("12:30", "16:00")),
                List.of(hours("16:00", "17:00")));
    }

    private static Window hours(String from, String to) {
        return new Window(LocalTime.parse(from), LocalTime.parse(to));
    }

    private static Catalogue catalogue() {
        Map<Usual, Usual.Words> usual = new EnumMap<>(Usual.class);
        for (Usual task : Usual.values()) {
            usual.put(task, new Usual.Words(task.name().toLowerCase(Locale.ROOT), ""));
        }
        Map<WorkKind, Double> spreads = new EnumMap<>(WorkKind.class);
        for (WorkKind kind : WorkKind.values()) {
            spreads.put(kind, 0.2);
        }
        return new Catalogue(
                List.of(quads(), tractors()), List.of(oil(), brakes()), usual, new Spreads(spreads, 0.1, 0.1), 10, 5);
    }

    private static MachineClass quads() {
        return new MachineClass(
                "quad",
                "quads",
                300,
                List.of(0, 6, 12, 20),
                new MachineClass.Moving(3, 10, 4, 4),
                List.of(
                        pads(),
                        point("frame", Step.UNDERSIDE, Depth.STANDARD, true),
                        battery(),
                        point("steering", Step.DRIVE, Depth.ONCE_OVER, true)));
    }

    private static MachineClass tractors() {
        return new MachineClass(
                "tractor",
                "tractors",
                1500,
                List.of(0, 10, 20, 40),
                new MachineClass.Moving(5, 20, 6, 6),
                List.of(point("axle", Step.UNDERSIDE, Depth.ONCE_OVER, false)));
    }

    private static Point point(String id, Step step, Depth due, boolean stopsRiding) {
        return new Point(id, id, "", step, due, 6, List.of(0, 1, 3, 6), "", stopsRiding, Optional.empty());
    }

    /** Brakes put them right. */
    private static Point pads() {
        Point plain = point("pads", Step.UNDERSIDE, Depth.ONCE_OVER, true);
        return measured(plain, new Point.Measure("mm", 1.5, 10), Optional.of("brakes"));
    }

    /** No line of work puts it right. */
    private static Point battery() {
        Point plain = point("battery", Step.TOPSIDE, Depth.ONCE_OVER, false);
        return measured(plain, new Point.Measure("V", 12.4, 12.9), Optional.empty());
    }

    private static Point measured(Point plain, Point.Measure measure, Optional<String> fixedBy) {
        return new Point(
                plain.id(),
                plain.name(),
                plain.where(),
                plain.step(),
                plain.due(),
                plain.inspectMinutes(),
                plain.uncoverMinutes(),
                plain.caution(),
                plain.stopsRiding(),
                Optional.of(measure),
                fixedBy,
                plain.renewedWith());
    }

    private static Work oil() {
        return new Work(
                "oil",
                "oil change",
                "o",
                Set.of("quad", "tractor"),
                Depth.ONCE_OVER,
                List.of(
                        task("drain", Step.UNDERSIDE, Skill.SERVICE, 5, 10, List.of(), false),
                        task("plug", Step.UNDERSIDE, Skill.SERVICE, 2, 0, List.of("drain"), false),
                        task("fill", Step.TOPSIDE, Skill.SERVICE, 5, 0, List.of(), false)),
                List.of());
    }

    private static Work brakes() {
        return new Work(
                "brakes",
                "front brakes",
                "b",
                Set.of("quad"),
                Depth.STANDARD,
                List.of(task("pads-change", Step.UNDERSIDE, Skill.BRAKES, 30, 0, List.of(), true)),
                List.of());
    }

    private static Work.WorkTask task(
            String id, Step step, Skill skill, int handsOn, int unattended, List<String> after, boolean checked) {
        return new Work.WorkTask(id, id, step, skill, List.of(), handsOn, unattended, after, checked, "");
    }

    public Day day() {
        return day;
    }

    /** The same shed with these books. */
    Shed with(Books books) {
        day = day.with(books);
        return this;
    }

    public Instant now() {
        return now;
    }

    public static Instant time(String time) {
        return DATE.atTime(LocalTime.parse(time)).atZone(ZONE).toInstant();
    }

    /** It is that time now. */
    /** So many days go by. */
    public Shed days(int days) {
        now = now.plusSeconds(86_400L * days);
        return this;
    }

    public Shed at(String time) {
        now = time(time);
        return this;
    }

    /** It is so many minutes later. */
    public Shed later(int minutes) {
        now = now.plusSeconds(60L * minutes);
        return this;
    }

    /** Another day begins at that time, with what stayed from the one before. */
    public Shed on(LocalDate date, String time) {
        day = day.on(date);
        now = date.atTime(LocalTime.parse(time)).atZone(ZONE).toInstant();
        return this;
    }

    /** Carries out what must be possible; the visit it was about, where it was about one. */
    public Optional<String> does(Act act) {
        return carries(act).subject();
    }

    /** The same; the trace it leaves. */
    public Trace leaves(Act act) {
        return carries(act).trace();
    }

    private Outcome.Done carries(Act act) {
        Outcome outcome = Planning.carryOut(day, act, now);
        if (!(outcome instanceof Outcome.Done done)) {
            throw new AssertionError(act + " is refused: " + outcome);
        }
        day = done.day();
        return done;
    }

    /** Ada takes back what left this trace. */
    static Act back(Trace trace) {
        return new Act.TakeBack(trace, "ada", "a slip of the finger");
    }

    /** The name of the reason why this cannot be; nothing is changed by it. */
    public Refusal refuses(Act act) {
        Outcome outcome = Planning.carryOut(day, act, now);
        if (!(outcome instanceof Outcome.Refused refused)) {
            throw new AssertionError(act + " is carried out");
        }
        return refused.refusal();
    }

    public void assertRefused(String name, Act act) {
        assertEquals(name, refuses(act).name());
    }

    public Act.OpenDay openDay() {
        return new Act.OpenDay(
                "ada",
                List.of(here("ada", "07:00", "16:00"), here("bo", "07:00", "16:00"), here("cy", "07:00", "16:00")),
                bothChecked());
    }

    public List<Act.OpenDay.Checked> bothChecked() {
        return List.of(checked("H1"), checked("H2"));
    }

    public static Act.OpenDay.Here here(String person, String from, String until) {
        return new Act.OpenDay.Here(person, time(from), time(until));
    }

    public static Act.OpenDay.Checked checked(String hoist) {
        return new Act.OpenDay.Checked(hoist, "ada", Optional.empty());
    }

    public static Act.OpenDay.Checked lockedOut(String hoist) {
        return new Act.OpenDay.Checked(hoist, "ada", Optional.of("the arm creaks"));
    }

    public static Act.TakeIn takeIn(String machine, Mud mud, String... works) {
        return takeIn(Act.TakeIn.Which.known(machine), nobodyNew(), mud, OptionalInt.empty(), Optional.empty(), works);
    }

    /** The same, with what its hour meter shows. */
    public static Act.TakeIn withMeter(Act.TakeIn act, int hours) {
        return new Act.TakeIn(
                act.whose(),
                act.which(),
                act.mud(),
                act.depth(),
                act.condition(),
                act.wanted(),
                act.tag(),
                OptionalInt.of(hours),
                act.expected(),
                act.note(),
                act.said(),
                act.dials());
    }

    /** The same, with what its kilometre meter shows. */
    public static Act.TakeIn withKilometres(Act.TakeIn act, int kilometres) {
        return new Act.TakeIn(
                act.whose(),
                act.which(),
                act.mud(),
                act.depth(),
                act.condition(),
                act.wanted(),
                act.tag(),
                act.meterHours(),
                act.expected(),
                act.note(),
                act.said(),
                new Act.TakeIn.Dials(OptionalInt.of(kilometres), act.dials().told()));
    }

    public static Act.TakeIn booking(String machine, String expected, String... works) {
        return takeIn(
                Act.TakeIn.Which.known(machine),
                nobodyNew(),
                CLEAN,
                OptionalInt.empty(),
                Optional.of(time(expected)),
                works);
    }

    public static Act.TakeIn.Whose nobodyNew() {
        return new Act.TakeIn.Whose(Optional.empty(), "", "");
    }

    public static Act.TakeIn takeIn(
            Act.TakeIn.Which which,
            Act.TakeIn.Whose whose,
            Mud mud,
            OptionalInt tag,
            Optional<Instant> expected,
            String... works) {
        List<Act.Wanted> wanted = new ArrayList<>();
        for (String work : works) {
            wanted.add(new Act.Wanted(work, Payer.OWNER));
        }
        return new Act.TakeIn(
                whose,
                which,
                mud,
                Optional.empty(),
                Condition.SOUND,
                wanted,
                tag,
                OptionalInt.empty(),
                expected,
                "",
                Optional.empty());
    }

    /** Handed over with a word on what there is to know. */
    public static Act.Collect.Handed handed() {
        return new Act.Collect.Handed("ada", "Tarn", "not to be ridden: the pads are gone");
    }

    /** A clean quad that came for its oil. */
    public String quad() {
        return does(takeIn("quad-1", CLEAN, "oil")).orElseThrow();
    }

    public static Act start(String person, String visit, String task) {
        return new Act.Start(person, visit, task, Optional.empty());
    }

    public static Act startIn(String place, String person, String visit, String task) {
        return new Act.Start(person, visit, task, Optional.of(place));
    }

    public static Act finish(String person, String visit, String task) {
        return new Act.Finish(person, visit, task, Optional.of(Mark.GOOD));
    }

    public static Act tick(String visit, String point, Mark mark) {
        return new Act.Tick("ada", visit, point, mark, OptionalDouble.empty(), "");
    }

    /** Something was read off. */
    public static Act measured(String visit, String point, Mark mark, double value) {
        return new Act.Tick("ada", visit, point, mark, OptionalDouble.of(value), "");
    }

    public static Act notReached(String visit, String point) {
        return new Act.Tick("ada", visit, point, Mark.NOT_REACHED, OptionalDouble.empty(), "no time");
    }

    /** Ada asks the owner about a fix. */
    public static Act ownerSaid(String visit, String point, OwnersWord.Answer answer) {
        return new Act.OwnerSaid(visit, point, answer, "ada", "Tarn");
    }

    public static Act promise(String visit, String at, String why, boolean ownersWish) {
        return new Act.SayPromise(visit, time(at), "ada", "Tarn", why, ownersWish);
    }

    public static Act hold(String visit) {
        return new Act.HoldVisit(visit, Hold.Reason.PARTS, "a plug", Optional.of(time("14:00")));
    }

    /** One after the other, each is started and finished a minute later. */
    public Shed works(String person, String visit, String... tasks) {
        for (String task : tasks) {
            does(start(person, visit, task));
            now = now.plusSeconds(60);
            does(finish(person, visit, task));
        }
        return this;
    }

    /** Everything up to the signature of a visit for oil is done by this person. */
    public Shed worksThrough(String person, String visit) {
        for (Task task : visit(visit).tasks()) {
            if (!task.isDone() && task.kind() != WorkKind.SIGN_OFF) {
                works(person, visit, task.id());
            }
        }
        return this;
    }

    public Visit visit(String id) {
        return day.expectVisit(id);
    }

    public Task task(String visit, String task) {
        return visit(visit).findTask(task).orElseThrow();
    }

    /** What a person is clocked on at the moment. */
    public Optional<Activity> on(String person) {
        return day.openEntryOf(person).map(ClockEntry::activity);
    }

    public Outlook outlook() {
        return Outlook.of(day, now);
    }
}
