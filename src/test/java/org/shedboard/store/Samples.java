package org.shedboard.store;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Item;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Spreads;
import org.shedboard.estimate.Usual;
import org.shedboard.estimate.Variant;
import org.shedboard.estimate.Work;
import org.shedboard.estimate.WorkPart;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Finding;
import org.shedboard.shop.HoistCheck;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.NumberRange;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Part;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Promise;
import org.shedboard.shop.ServiceInterval;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Unit;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.Window;
import org.shedboard.shop.WorkKind;

/** An invented shop and what comes into it, with every part of every value present in one of them and absent in another. */
final class Samples {
    static final Instant MORNING = Instant.parse("2026-11-24T19:40:00Z");
    static final Stamp STAMP = new Stamp(MORNING, "kea", "bench");

    static final Owner OWNER = new Owner("o1", "Wiremu O'Connor", "021 555 0101");
    static final Machine MACHINE = new Machine(
            "m1", "o1", "quad", "Drover 450", OptionalInt.of(2019), "DRV450-0001", 310, OptionalInt.of(812));
    static final Machine BARE_MACHINE =
            new Machine("m2", "o1", "mower", "", OptionalInt.empty(), "", 180, OptionalInt.empty());

    private Samples() {}

    static Instant at(int minute) {
        return MORNING.plusSeconds(60L * minute);
    }

    static Shop shop() {
        Window early = new Window(LocalTime.of(7, 30), LocalTime.of(12, 0));
        Window late = new Window(LocalTime.of(12, 30), LocalTime.of(16, 30));
        return new Shop(
                "Tussock Flat Machinery",
                ZoneId.of("Pacific/Auckland"),
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                List.of(
                        new Place("pad", "Wash pad", PlaceKind.WASH, Place.NO_LIMIT),
                        new Place("h1", "Hoist 1", PlaceKind.HOIST, 1200),
                        new Place("b1", "Bay 1", PlaceKind.FLOOR, Place.NO_LIMIT)),
                List.of(
                        new Person(
                                "kea",
                                "Kea",
                                "foreman",
                                EnumSet.allOf(Skill.class),
                                100,
                                List.of(early, late),
                                List.of(new Window(LocalTime.of(16, 30), LocalTime.of(18, 0)))),
                        new Person("abe", "Abe", "", Set.of(), 160, List.of(early), List.of())));
    }

    static Catalogue catalogue() {
        Map<Usual, Usual.Words> usual = new EnumMap<>(Usual.class);
        for (Usual task : Usual.values()) {
            usual.put(task, new Usual.Words("do " + task, task == Usual.RAISE ? "nobody under it" : ""));
        }
        Map<WorkKind, Double> spreads = new EnumMap<>(WorkKind.class);
        for (WorkKind kind : WorkKind.values()) {
            spreads.put(kind, 0.1 + kind.ordinal() / 3.0);
        }
        return new Catalogue(
                List.of(quads(), new MachineClass("mower", "Ride-on", 180, List.of(1, 2, 3, 4), moving(), List.of())),
                List.of(
                        oilChange(),
                        new Work(
                                "look",
                                "A look",
                                "L",
                                Set.of(),
                                Depth.FULL,
                                List.of(),
                                List.of(),
                                Optional.of(new ServiceInterval(
                                        OptionalInt.of(200),
                                        OptionalInt.empty(),
                                        OptionalInt.of(12),
                                        List.of("oil"))))),
                usual,
                new Spreads(spreads, 0.25, 1.0 / 7),
                15,
                8,
                List.of(
                        new Item("oil", "Engine oil", Unit.LITRES, 2, false),
                        new Item("short", "Filter, short", Unit.EACH, 0, true)));
    }

    private static MachineClass.Moving moving() {
        return new MachineClass.Moving(3, 9, 4, 5);
    }

    private static MachineClass quads() {
        return new MachineClass(
                "quad",
                "Quad",
                300,
                List.of(0, 10, 25, 45),
                moving(),
                List.of(
                        new Point(
                                "boot",
                                "CV boot",
                                "front left",
                                Step.UNDERSIDE,
                                Depth.STANDARD,
                                4,
                                List.of(0, 1, 4, 9),
                                "",
                                false,
                                Optional.empty()),
                        new Point(
                                "pad",
                                "Brake pad",
                                "rear",
                                Step.TOPSIDE,
                                Depth.ONCE_OVER,
                                3,
                                List.of(0, 0, 2, 5),
                                "dust",
                                true,
                                Optional.of(new Point.Measure("mm", 1.5, 6.25)),
                                Optional.of("oil"),
                                Optional.of("short"))));
    }

    /** By year for one class, by number for the other. */
    private static List<Variant> filters() {
        return List.of(
                new Variant("short", Set.of("quad"), new Variant.Years(OptionalInt.empty(), OptionalInt.of(2014))),
                new Variant("long", Set.of("quad"), new Variant.Years(OptionalInt.of(2015), OptionalInt.empty())),
                new Variant(
                        "short",
                        Set.of("mower"),
                        new Variant.Serials(new NumberRange("AB-", OptionalLong.of(1), OptionalLong.empty()))));
    }

    private static Work oilChange() {
        return new Work(
                "oil",
                "Oil change",
                "O",
                Set.of("quad", "mower"),
                Depth.STANDARD,
                List.of(
                        new Work.WorkTask(
                                "drain",
                                "Drain",
                                Step.UNDERSIDE,
                                Skill.SERVICE,
                                List.of(PlaceKind.HOIST, PlaceKind.FLOOR),
                                10,
                                15,
                                List.of(),
                                false,
                                "hot oil"),
                        new Work.WorkTask(
                                "fill",
                                "Fill",
                                Step.TOPSIDE,
                                Skill.SERVICE,
                                List.of(),
                                6,
                                0,
                                List.of("drain", "plug"),
                                true,
                                "")),
                List.of(
                        new WorkPart("Oil", "2.5 L", "fill", List.of(Variant.everywhere("oil"))),
                        new WorkPart("Filter", "1", "drain", filters()),
                        new WorkPart("Rag", "1")));
    }

    /** A visit in hand with one of everything. */
    static Visit fullVisit(String id, int tag) {
        return new Visit(
                id,
                "m1",
                OptionalInt.of(tag),
                VisitState.IN_HAND,
                new Intake(at(-30), Mud.CAKED, Depth.FULL, new Condition(true, true, false, true), "pulls left")
                        .alsoLookingAt(List.of("pad", "boot"))
                        .withMeterHours(OptionalInt.of(812)),
                List.of(
                        new Line(
                                "1",
                                "oil",
                                "Oil change",
                                Payer.OWNER,
                                List.of(
                                        new Part("Oil", "2.5 L"),
                                        new Part("Filter", "1").with(new Part.Fitted("short", "kea", at(5))))),
                        new Line("2", "boot", "CV boot", Payer.MAKER, List.of())),
                List.of(
                        new Stay(
                                Step.WASH,
                                List.of(PlaceKind.WASH),
                                Optional.of("pad"),
                                List.of(washed(), uncovering())),
                        new Stay(Step.UNDERSIDE, List.of(PlaceKind.HOIST), Optional.empty(), List.of(drain(), boot())),
                        new Stay(Step.DRIVE, List.of(), Optional.empty(), List.of(signOff()))),
                List.of(
                        new Promise(at(300), "kea", "Wiremu", at(-20), "", false),
                        new Promise(at(360), "kea", "his brother", at(10), "split boot", true)),
                List.of(
                        new Finding("boot", Mark.FIX, OptionalDouble.empty(), "split", "abe", at(9))
                                .with(new OwnersWord(OwnersWord.Answer.NO, "boot", "kea", "Wiremu", at(15))),
                        new Finding("pad", Mark.WATCH, OptionalDouble.of(2.25), "", "abe", at(12))),
                Optional.empty(),
                Optional.empty());
    }

    private static Task washed() {
        return task("wash", WorkKind.CLEAN, Skill.WASH, 20, 0)
                .with(Progress.TO_DO.started("abe", at(-25), 20).done("abe", at(-3)));
    }

    private static Task uncovering() {
        return task("uncover", WorkKind.CLEAN, Skill.WASH, 15, 0)
                .withAfter(List.of("wash"))
                .with(Progress.TO_DO.started("abe", at(-3), 15).paused(at(4), 8));
    }

    private static Task drain() {
        return task("drain", WorkKind.REPAIR, Skill.SERVICE, 10, 15);
    }

    private static Task boot() {
        return task("boot", WorkKind.REPAIR, Skill.SERVICE, 0, 30)
                .withAfter(List.of("drain", "raise"))
                .pinned(Optional.of(new TaskPin(Optional.of("H1"), Optional.of(at(450)), Optional.empty())));
    }

    private static Task signOff() {
        return task("sign-off", WorkKind.SIGN_OFF, Skill.SIGN_OFF, 8, 0).withNotBy(List.of("boot", "drain"));
    }

    private static Task task(String id, WorkKind kind, Skill skill, int handsOn, int unattended) {
        List<String> lines = kind == WorkKind.REPAIR ? List.of("1", "2") : List.of();
        return new Task(
                id,
                "do " + id,
                kind,
                skill,
                handsOn,
                unattended,
                List.of(),
                List.of(),
                lines,
                kind == WorkKind.REPAIR ? "hot oil" : "",
                Progress.TO_DO);
    }

    /** A booking with as little as a visit can have. */
    static Visit bareVisit(String id) {
        return new Visit(
                id,
                "m2",
                OptionalInt.empty(),
                VisitState.BOOKED,
                new Intake(at(600), Mud.CLEAN, Depth.ONCE_OVER, Condition.SOUND, ""),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    static Hold hold() {
        return new Hold(Hold.Reason.PARTS, "boot kit on Thursday's truck", at(20), at(2000));
    }

    static Opening opening(LocalDate date) {
        return new Opening(
                date,
                at(0),
                "kea",
                List.of(
                        new Attendance("kea", at(0), at(480), Optional.empty()),
                        new Attendance("abe", at(5), at(400), Optional.of(at(90)))),
                List.of(
                        new HoistCheck("h1", "kea", at(2), Optional.empty()),
                        new HoistCheck("h2", "kea", at(3), Optional.of("arm pad missing"))),
                Optional.empty());
    }

    static Plan plan() {
        return new Plan(
                12345678901L,
                -4,
                List.of(new Plan.Unplaced("v9", "no hoist carries it")),
                List.of(new Plan.StayPlace("v1", 1, "h1", 10, 90), new Plan.StayPlace("v1", 0, "pad", 0, 10)),
                List.of(
                        new Plan.TaskTime("v1", 0, "wash", Optional.of("abe"), List.of("kea"), 0, 10),
                        new Plan.TaskTime("v1", 1, "boot", Optional.empty(), List.of(), 10, 40)),
                -7,
                20_000,
                812);
    }

    /** Visits that stand here or are booked, each with its own tag. */
    static List<Visit> visits(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> fullVisit("v" + i, i))
                .toList();
    }

    /** What every visit refers to. */
    static void base(Tx tx) {
        tx.saveShop(shop());
        tx.saveCatalogue(catalogue());
        tx.saveOwner(OWNER);
        tx.saveMachines(List.of(MACHINE, BARE_MACHINE));
    }
}
