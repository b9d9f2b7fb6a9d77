package org.shedboard.day;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Work;
import org.shedboard.hours.Activity;
import org.shedboard.pack.Search;
import org.shedboard.pack.search.Packer;
import org.shedboard.register.Order;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** Acts such as people at a terminal might think of, sensible ones and others. */
public final class RandomActs {
    private final Random random;

    public RandomActs(Random random) {
        this.random = random;
    }

    /** Some act; whether it can be is for the day to say. */
    public Act next(Day day, Instant now) {
        return switch (random.nextInt(35)) {
            case 0 -> takeIn(day, now);
            case 1 -> new Act.Arrive(visit(day).id(), Optional.of(any(Mud.values())), OptionalInt.empty());
            case 2 ->
                new Act.SayPromise(
                        visit(day).id(),
                        later(now),
                        person(day).id(),
                        "the owner",
                        "it takes longer",
                        random.nextBoolean());
            case 3, 4, 5 -> start(day, visit(day));
            case 6 -> pause(visit(day));
            case 7, 8, 9, 10 -> finish(day, visit(day));
            case 11 -> tick(day, visit(day));
            case 12 -> hold(day, now);
            case 13, 14 -> new Act.Release(visit(day).id());
            case 15 -> handOver(day, visit(day));
            case 16 ->
                new Act.AddWork(
                        visit(day).id(), wanted(day, day.machineOf(visit(day)).classId()));
            case 17 -> new Act.DoOther(person(day).id(), any(Activity.OtherWork.Kind.values()));
            case 18 -> new Act.Stop(person(day).id(), random.nextInt(3) == 0);
            case 19 -> new Act.BeHere(person(day).id(), later(now));
            case 20 -> new Act.CheckHoist(check(day, hoist(day)));
            case 21 ->
                new Act.Collect(visit(day).id(), random.nextBoolean() ? Optional.of(handed(day)) : Optional.empty());
            case 22 -> new Act.CallOff(visit(day).id(), random.nextBoolean());
            case 23 -> new Act.TakeBreak(person(day).id(), any(Activity.Break.Kind.values()));
            case 24, 25 -> new Act.Lend(person(day).id(), visit(day).id());
            case 26 -> new Act.BringBack(person(day).id());
            case 27 -> planErrand(day, now);
            case 28 -> onErrand(day);
            case 29 -> correct(day, now);
            case 30, 31 -> atShelf(day, now);
            case 32 -> inTheRegister(day);
            case 33 -> ownerSaid(day, visit(day));
            default -> post(day, now);
        };
    }

    /** Few are counted, so that something is short now and then. */
    private Act atShelf(Day day, Instant now) {
        String item = any(day.books().catalogue().items()).id();
        String by = person(day).id();
        Amount few = Amount.of(random.nextInt(3));
        return switch (random.nextInt(4)) {
            case 0 -> new Act.OrderStock(item, few, Optional.of(later(now)), by);
            case 1 -> new Act.OrderStock(item, few, Optional.empty(), by);
            case 2 -> {
                List<Order> orders = day.books().shelf().orders();
                yield new Act.OrderCame(orders.isEmpty() ? "R0" : any(orders).id(), by);
            }
            default -> new Act.CountStock(item, few, Optional.empty(), by);
        };
    }

    private Act inTheRegister(Day day) {
        Machine machine = any(day.books().machines());
        String ownerId = machine.ownerId();
        return switch (random.nextInt(4)) {
            case 0 ->
                new Act.CorrectMachine(
                        machine.id(),
                        "put right",
                        OptionalInt.of(2000 + random.nextInt(30)),
                        "1M8GDM9A1AP042788",
                        1 + random.nextInt(3000));
            case 1 -> new Act.CorrectOwner(ownerId, "Somebody else", "0000 9");
            case 2 ->
                new Act.MergeMachines(machine.id(), any(day.books().machines()).id());
            default -> new Act.ForgetOwner(ownerId);
        };
    }

    private Act.Collect.Handed handed(Day day) {
        return new Act.Collect.Handed(person(day).id(), "the owner", "not to be ridden");
    }

    private Act ownerSaid(Day day, Visit visit) {
        List<Point> points = day.books()
                .catalogue()
                .expectClass(day.machineOf(visit).classId())
                .points();
        return new Act.OwnerSaid(
                visit.id(),
                any(points).id(),
                any(OwnersWord.Answer.values()),
                person(day).id(),
                "the owner");
    }

    private Act planErrand(Day day, Instant now) {
        return new Act.PlanErrand(
                person(day).id(), any(Activity.OtherWork.Kind.values()), later(now), 1 + random.nextInt(90), "");
    }

    private Act onErrand(Day day) {
        String id = day.errands().isEmpty() ? "E0" : any(day.errands()).id();
        return random.nextBoolean() ? new Act.RunErrand(id) : new Act.DropErrand(id);
    }

    private Act correct(Day day, Instant now) {
        Optional<String> old = day.entries().isEmpty() || random.nextInt(3) == 0
                ? Optional.empty()
                : Optional.of(any(day.entries()).id());
        Instant from = now.minusSeconds(60L * random.nextInt(300));
        Act.Correct.Written right = new Act.Correct.Written(
                person(day).id(),
                new Activity.OtherWork(any(Activity.OtherWork.Kind.values())),
                from,
                from.plusSeconds(60L * random.nextInt(60)));
        Optional<Act.Correct.Written> written = random.nextInt(4) == 0 ? Optional.empty() : Optional.of(right);
        return new Act.Correct(person(day).id(), old, written, "it was so");
    }

    /** Everybody but a few is here, and each hoist was checked, locked out or forgotten. */
    Act openDay(Day day) {
        List<Act.OpenDay.Here> here = new ArrayList<>();
        for (Person person : day.shop().people()) {
            if (here.isEmpty() || random.nextInt(4) > 0) {
                here.add(new Act.OpenDay.Here(
                        person.id(),
                        at(day, person.startsAt()),
                        at(day, person.knockOff()).plusSeconds(1800)));
            }
        }
        List<Act.OpenDay.Checked> checks = new ArrayList<>();
        for (Place hoist : day.shop().hoists()) {
            if (random.nextInt(4) > 0) {
                checks.add(check(day, hoist));
            }
        }
        return new Act.OpenDay(person(day).id(), here, checks);
    }

    static Instant at(Day day, LocalTime time) {
        return day.date().atTime(time).atZone(day.zone()).toInstant();
    }

    private Act.OpenDay.Checked check(Day day, Place hoist) {
        Optional<String> lockedOut = random.nextInt(4) == 0 ? Optional.of("it creaks") : Optional.empty();
        return new Act.OpenDay.Checked(hoist.id(), person(day).id(), lockedOut);
    }

    private Act takeIn(Day day, Instant now) {
        Machine machine = any(day.books().machines());
        Optional<Instant> expected = random.nextInt(3) == 0 ? Optional.of(later(now)) : Optional.empty();
        Optional<Act.TakeIn.Said> said = random.nextBoolean()
                ? Optional.of(new Act.TakeIn.Said(later(now), person(day).id(), "the owner"))
                : Optional.empty();
        return new Act.TakeIn(
                new Act.TakeIn.Whose(Optional.empty(), "", ""),
                Act.TakeIn.Which.known(machine.id()),
                any(Mud.values()),
                random.nextBoolean() ? Optional.of(any(Depth.values())) : Optional.empty(),
                new Condition(random.nextInt(4) > 0, true, true, true),
                wanted(day, machine.classId()),
                OptionalInt.empty(),
                OptionalInt.empty(),
                expected,
                "",
                said);
    }

    private List<Act.Wanted> wanted(Day day, String classId) {
        List<Work> works = day.books().catalogue().worksFor(classId);
        List<Act.Wanted> wanted = new ArrayList<>();
        for (int i = random.nextInt(2); i >= 0; i--) {
            wanted.add(new Act.Wanted(any(works).id(), any(Payer.values())));
        }
        return wanted;
    }

    private Act start(Day day, Visit visit) {
        Optional<String> place =
                random.nextInt(3) == 0 ? Optional.of(any(day.shop().places()).id()) : Optional.empty();
        return new Act.Start(person(day).id(), visit.id(), openTask(visit), place);
    }

    private Act pause(Visit visit) {
        return new Act.Pause(visit.id(), runningTask(visit));
    }

    private Act finish(Day day, Visit visit) {
        Optional<Mark> rest = random.nextInt(5) == 0 ? Optional.empty() : Optional.of(any(Mark.values()));
        return new Act.Finish(person(day).id(), visit.id(), runningTask(visit), rest, "no time");
    }

    private Act handOver(Day day, Visit visit) {
        return new Act.HandOver(visit.id(), runningTask(visit), person(day).id());
    }

    private Act tick(Day day, Visit visit) {
        List<Point> points = day.books()
                .catalogue()
                .expectClass(day.machineOf(visit).classId())
                .points();
        return new Act.Tick(
                person(day).id(), visit.id(), any(points).id(), any(Mark.values()), OptionalDouble.empty(), "no time");
    }

    private Act hold(Day day, Instant now) {
        Optional<Instant> until = random.nextBoolean() ? Optional.of(later(now)) : Optional.empty();
        return new Act.HoldVisit(visit(day).id(), any(Hold.Reason.values()), "", until);
    }

    private Act post(Day day, Instant now) {
        return new Act.Post(new Posted(
                Packer.pack(Problems.of(day, now), new Search(random.nextInt(), 20 + random.nextInt(50))),
                day.origin()));
    }

    /** The next task of the visit as a rule, any of them now and then. */
    private String openTask(Visit visit) {
        if (random.nextInt(6) == 0) {
            return any(visit.tasks()).id();
        }
        List<Task> open = visit.tasks().stream()
                .filter(task -> !task.isDone() && !task.progress().isRunning())
                .toList();
        return open.isEmpty()
                ? "nothing"
                : open.get(Math.min(open.size() - 1, random.nextInt(3))).id();
    }

    private static String runningTask(Visit visit) {
        return visit.tasks().stream()
                .filter(task -> task.progress().isRunning())
                .map(Task::id)
                .findFirst()
                .orElse("nothing");
    }

    /** Later today as a rule, some days on now and then, and once in a while next month. */
    private Instant later(Instant now) {
        long minutes = random.nextInt(30) == 0
                ? 30 * 24 * 60
                : random.nextInt(4) == 0 ? random.nextInt(4 * 24 * 60) : random.nextInt(6 * 60);
        return now.plusSeconds(60 * minutes);
    }

    private Visit visit(Day day) {
        return any(day.visits());
    }

    private Person person(Day day) {
        return any(day.shop().people());
    }

    private Place hoist(Day day) {
        return any(day.shop().hoists());
    }

    private <T> T any(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private <T> T any(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
