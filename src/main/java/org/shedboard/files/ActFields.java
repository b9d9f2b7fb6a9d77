package org.shedboard.files;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.day.Act;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Item;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Work;
import org.shedboard.hours.Activity;
import org.shedboard.register.Reading.Told;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Step;

/** The acts of a morning: {@code "do"} says which act it is and so which other keys it has. */
final class ActFields {
    private static final int HIGHEST_TAG = 999;
    private static final int MOST_HOURS = 1_000_000;
    private static final double FURTHEST = 1_000_000;

    private final Map<String, Machine> machines;
    private final Catalogue catalogue;
    private final Handles handles;
    private final Set<String> people;
    private final Set<String> hoists;
    private final Set<String> places;

    /** What a machine can do by itself. */
    private enum Ability {
        RUNS,
        ROLLS,
        STEERS,
        STOPS
    }

    /** One act being read: its keys, who did it, and what its times mean. */
    private record Entry(Fields fields, String by, DayTime.Moments moments) {
        Instant moment(String name) {
            return moments.apply(fields.parsed(name, DayTime.WANTED, DayTime.NONE, DayTime::parse));
        }

        Optional<Instant> findMoment(String name) {
            return fields.findParsed(name, DayTime.WANTED, DayTime::parse).map(moments);
        }
    }

    ActFields(Shop shop, List<Machine> machines, Catalogue catalogue) {
        this.machines =
                machines.stream().collect(Collectors.toMap(Machine::id, machine -> machine, (one, other) -> one));
        this.catalogue = catalogue;
        this.handles = new Handles(catalogue);
        this.people = ShopFile.ids(shop.people().stream().map(Person::id));
        this.places = ShopFile.ids(shop.places().stream().map(Place::id));
        this.hoists = ShopFile.ids(shop.hoists().stream().map(Place::id));
    }

    Set<String> peopleIds() {
        return people;
    }

    /** The act, or several where one entry ticks several points; none when it cannot be told what it does. */
    List<Act> read(Fields fields, String by, DayTime.Moments moments) {
        int before = fields.faultCount();
        Deed deed = fields.oneOf("do", Deed.class);
        if (fields.faultCount() > before) {
            fields.leave();
            return List.of();
        }
        Entry entry = new Entry(fields, by, moments);
        return deed == Deed.TICK ? ticks(entry) : List.of(act(deed, entry));
    }

    private Act act(Deed deed, Entry entry) {
        return switch (deed) {
            case OPEN_DAY -> openDay(entry);
            case TAKE_IN -> takeIn(entry);
            case ARRIVE -> arrive(entry);
            case SAY_PROMISE -> sayPromise(entry);
            case START -> new Act.Start(person(entry), visit(entry), task(entry), place(entry));
            case PAUSE -> new Act.Pause(visit(entry), task(entry));
            case FINISH ->
                new Act.Finish(
                        person(entry),
                        visit(entry),
                        task(entry),
                        rest(entry),
                        entry.fields().findText("why").orElse(""));
            case HOLD -> hold(entry);
            case RELEASE -> new Act.Release(visit(entry));
            case HAND_OVER -> new Act.HandOver(visit(entry), task(entry), personIn(entry.fields(), "to"));
            case ADD_WORK -> addWork(entry);
            case DO_OTHER ->
                new Act.DoOther(person(entry), entry.fields().oneOf("work", Activity.OtherWork.Kind.class));
            case STOP -> new Act.Stop(person(entry), entry.fields().flag("leaves", false));
            case BE_HERE -> new Act.BeHere(person(entry), entry.moment("until"));
            case CHECK_HOIST -> new Act.CheckHoist(checked(entry.fields(), entry.by()));
            case COLLECT ->
                new Act.Collect(
                        visit(entry), entry.fields().findObject("handed", fields -> handed(fields, entry.by())));
            case CALL_OFF -> new Act.CallOff(visit(entry), entry.fields().flag("noShow", false));
            case ORDER -> order(entry);
            case CLOSE_DAY -> new Act.CloseDay(entry.by());
            case TICK -> throw new IllegalArgumentException("a tick may be several acts");
        };
    }

    private Act.Collect.Handed handed(Fields fields, String by) {
        String handedBy = fields.has("by") ? personIn(fields, "by") : by;
        return new Act.Collect.Handed(handedBy, fields.filled("to"), fields.filled("told"));
    }

    private Act order(Entry entry) {
        StockFields stock = new StockFields(catalogue);
        Optional<Item> item = stock.item(entry.fields());
        Amount amount = stock.amount(entry.fields(), item);
        String id = item.map(Item::id).orElse("?");
        return new Act.OrderStock(id, amount, entry.findMoment("due"), entry.by());
    }

    private static Optional<Mark> rest(Entry entry) {
        return entry.fields().has("rest") ? Optional.of(entry.fields().oneOf("rest", Mark.class)) : Optional.empty();
    }

    private Act openDay(Entry entry) {
        List<Act.OpenDay.Here> here =
                entry.fields().objects("here", fields -> here(new Entry(fields, entry.by(), entry.moments())));
        return new Act.OpenDay(
                entry.by(), here, entry.fields().objects("checks", fields -> checked(fields, entry.by())));
    }

    private Act.OpenDay.Here here(Entry entry) {
        return new Act.OpenDay.Here(personIn(entry.fields(), "person"), entry.moment("from"), entry.moment("until"));
    }

    private Act.OpenDay.Checked checked(Fields fields, String by) {
        String place = fields.text("place");
        fields.known("place", place, hoists, "hoist");
        String checkedBy = fields.has("checkedBy") ? personIn(fields, "checkedBy") : by;
        return new Act.OpenDay.Checked(place, checkedBy, fields.findText("lockedOut"));
    }

    private Act takeIn(Entry entry) {
        Fields fields = entry.fields();
        String handle = fields.text("visit");
        String machineId = fields.text("machine");
        fields.known("machine", machineId, machines.keySet(), "machine");
        Optional<Machine> machine = Optional.ofNullable(machines.get(machineId));
        Optional<String> classId = machine.map(Machine::classId)
                .filter(id -> catalogue.findClass(id).isPresent());
        Act.TakeIn act = new Act.TakeIn(
                new Act.TakeIn.Whose(machine.map(Machine::ownerId), "", ""),
                Act.TakeIn.Which.known(machineId),
                Mud.of(fields.whole("mud", 0, Mud.values().length - 1)),
                fields.has("depth") ? Optional.of(fields.oneOf("depth", Depth.class)) : Optional.empty(),
                condition(fields),
                wanted(fields, classId),
                fields.findWhole("tag", 1, HIGHEST_TAG),
                fields.findWhole("meterHours", 0, MOST_HOURS),
                entry.findMoment("expected"),
                fields.findText("said").orElse(""),
                fields.findObject("promise", each -> said(new Entry(each, entry.by(), entry.moments()))),
                new Act.TakeIn.Dials(
                        fields.findWhole("meterKilometres", 0, ShopFile.MOST_KILOMETRES),
                        fields.flag("newMeter", false) ? Told.NEW_METER : Told.AS_EXPECTED));
        handles.take(fields, handle, classId, act);
        return act;
    }

    private static Act.TakeIn.Said said(Entry entry) {
        return new Act.TakeIn.Said(
                entry.moment("ready"), entry.by(), entry.fields().filled("to"));
    }

    private static Condition condition(Fields fields) {
        if (!fields.has("condition")) {
            return Condition.SOUND;
        }
        List<Ability> can = fields.someOf("condition", Ability.class);
        return new Condition(
                can.contains(Ability.RUNS),
                can.contains(Ability.ROLLS),
                can.contains(Ability.STEERS),
                can.contains(Ability.STOPS));
    }

    private List<Act.Wanted> wanted(Fields fields, Optional<String> classId) {
        return fields.someObjects("works", each -> {
            Payer payer = each.has("payer") ? each.oneOf("payer", Payer.class) : Payer.OWNER;
            return new Act.Wanted(work(each, classId), payer);
        });
    }

    private String work(Fields fields, Optional<String> classId) {
        String id = fields.text("work");
        Optional<Work> work = catalogue.findWork(id);
        fields.known("work", id, ShopFile.ids(catalogue.works().stream().map(Work::id)), "work");
        if (work.isPresent() && classId.isPresent() && !work.get().isFor(classId.get())) {
            fields.fault("work", "\"%s\" is no work for a %s".formatted(id, classId.get()));
        }
        return id;
    }

    private Act arrive(Entry entry) {
        Fields fields = entry.fields();
        String handle = visit(entry);
        Optional<Mud> mud = fields.has("mud")
                ? Optional.of(Mud.of(fields.whole("mud", 0, Mud.values().length - 1)))
                : Optional.empty();
        handles.arrive(handle, mud);
        return new Act.Arrive(handle, mud, fields.findWhole("tag", 1, HIGHEST_TAG));
    }

    private Act sayPromise(Entry entry) {
        Fields fields = entry.fields();
        return new Act.SayPromise(
                visit(entry),
                entry.moment("ready"),
                entry.by(),
                fields.filled("to"),
                fields.findText("why").orElse(""),
                fields.flag("ownersWish", false));
    }

    private Act hold(Entry entry) {
        Fields fields = entry.fields();
        return new Act.HoldVisit(
                visit(entry),
                fields.oneOf("reason", Hold.Reason.class),
                fields.findText("note").orElse(""),
                entry.findMoment("until"));
    }

    private Act addWork(Entry entry) {
        String handle = visit(entry);
        List<Act.Wanted> wanted = wanted(entry.fields(), handles.classOf(handle));
        handles.add(handle, wanted);
        return new Act.AddWork(handle, wanted);
    }

    /** One point, or with a step in its place all points of that step that were not ticked yet. */
    private List<Act> ticks(Entry entry) {
        Fields fields = entry.fields();
        String person = person(entry);
        String handle = visit(entry);
        Mark mark = fields.has("mark") ? fields.oneOf("mark", Mark.class) : Mark.GOOD;
        String note = fields.findText("note").orElse("");
        OptionalDouble measured = fields.has("measured")
                ? OptionalDouble.of(fields.decimal("measured", -FURTHEST, FURTHEST))
                : OptionalDouble.empty();
        Function<String, Act> tick = point -> new Act.Tick(person, handle, point, mark, measured, note);
        return pointsToTick(fields, handle).map(tick).toList();
    }

    private Stream<String> pointsToTick(Fields fields, String handle) {
        if (!fields.has("step")) {
            return Stream.of(point(fields, handle));
        }
        List<String> rest = handles.tickRest(handle, fields.oneOf("step", Step.class));
        if (rest.isEmpty() && handles.pointsOf(handle).isPresent()) {
            fields.fault("step", "leaves no point of \"%s\" to tick".formatted(handle));
        }
        return rest.stream();
    }

    private String point(Fields fields, String handle) {
        String id = fields.text("point");
        handles.pointsOf(handle)
                .ifPresent(points -> fields.known(
                        "point", id, ShopFile.ids(points.stream().map(Point::id)), "point looked at on " + handle));
        handles.tick(handle, id);
        return id;
    }

    private String visit(Entry entry) {
        String handle = entry.fields().text("visit");
        entry.fields().known("visit", handle, handles.all(), "visit");
        return handle;
    }

    private String task(Entry entry) {
        Fields fields = entry.fields();
        String id = fields.text("task");
        String handle = fields.findText("visit").orElse("");
        handles.tasksOf(handle).ifPresent(tasks -> fields.known("task", id, tasks, "task of " + handle));
        return id;
    }

    private Optional<String> place(Entry entry) {
        Optional<String> id = entry.fields().findText("place");
        id.ifPresent(place -> entry.fields().known("place", place, places, "place"));
        return id;
    }

    /** Whom it is about: whoever stands at the terminal where nobody else is named. */
    private String person(Entry entry) {
        return entry.fields().has("person") ? personIn(entry.fields(), "person") : entry.by();
    }

    private String personIn(Fields fields, String name) {
        String id = fields.text(name);
        fields.known(name, id, people, "person");
        return id;
    }
}
