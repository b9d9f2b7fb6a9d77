package org.shedboard.files;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.day.Act;
import org.shedboard.day.Acts;
import org.shedboard.day.Beginning;
import org.shedboard.day.Books;
import org.shedboard.day.Day;
import org.shedboard.day.Outcome;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.SpanTally;

/**
 * The demonstration's Tuesday gone on with until it is closed, by acts that the rules allow: two more people come, more machines are
 * taken in, and whoever is free starts the first task that they may.
 */
final class BusyDay {
    private static final LocalTime ENDS = LocalTime.of(16, 30);
    private static final int STEP_MINUTES = 2;
    private static final int DINNER = 12 * 60 + 30;
    /** In minutes after dinner begins. */
    private static final int TEA = 150;

    private Day day;
    private Instant now;

    private BusyDay(Map<String, String> ownerNames) {
        Day morning = morning();
        day = with(morning, books(morning.books(), ownerNames));
        now = at(9, 40);
    }

    /** The demonstration as it opens. */
    static Day morning() {
        Catalogue catalogue = Seed.catalogue();
        Setup setup = Seed.shop(catalogue);
        return Beginning.of(catalogue, setup, LocalDate.EPOCH).day();
    }

    /** @param ownerNames what owners are called instead, by their id */
    static SpanTally tally(Map<String, String> ownerNames) {
        BusyDay busy = new BusyDay(ownerNames);
        busy.run();
        return SpanTally.of(Ledger.of(busy.day, busy.now));
    }

    private static Day with(Day day, Books books) {
        return new Day(
                books,
                day.date(),
                day.opening(),
                day.visits(),
                day.entries(),
                day.errands(),
                day.unclosed(),
                day.posted(),
                day.nextNumber());
    }

    private static Books books(Books books, Map<String, String> ownerNames) {
        Shop shop = books.shop();
        List<Person> people = new ArrayList<>(shop.people());
        people.add(like(shop.people().get(1), "P5", "Sunniva"));
        people.add(like(shop.people().get(2), "P6", "Bartholomea"));
        List<Owner> owners = books.owners().stream()
                .map(owner -> new Owner(owner.id(), ownerNames.getOrDefault(owner.id(), owner.name()), owner.phone()))
                .toList();
        return new Books(
                new Shop(shop.name(), shop.zone(), shop.workdays(), shop.places(), people),
                books.catalogue(),
                owners,
                books.machines(),
                books.hoursRules(),
                books.signers());
    }

    private static Person like(Person other, String id, String name) {
        return new Person(id, name, other.role(), other.skills(), 110, other.shifts(), other.overtime());
    }

    private Instant at(int hour, int minute) {
        return day.date().atTime(hour, minute).atZone(day.zone()).toInstant();
    }

    private void run() {
        for (String id : List.of("P5", "P6")) {
            does(new Act.BeHere(id, at(16, 30)));
        }
        takeIn("M15", "oil-quad", "brakes-front");
        takeIn("M16", "oil-mower");
        takeIn("M17", "tyre-one");
        takeIn("M14", "chain-kit", "oil-farm-bike");
        takeIn("M23", "minor-quad");
        takeIn("M19", "wheel-bearing", "tie-rod");
        takeIn("M22", "blades");
        while (now.isBefore(at(ENDS.getHour(), ENDS.getMinute()))) {
            goOn();
            now = now.plusSeconds(60L * STEP_MINUTES);
        }
        putRight();
        day.opening().orElseThrow().here().forEach(here -> does(new Act.Stop(here.personId(), true)));
        now = at(16, 41);
        does(new Act.CloseDay("P1"));
    }

    private void takeIn(String machine, String... works) {
        List<Act.Wanted> wanted = new ArrayList<>();
        for (String work : works) {
            wanted.add(new Act.Wanted(work, wanted.isEmpty() ? Payer.OWNER : Payer.MAKER));
        }
        does(new Act.TakeIn(
                new Act.TakeIn.Whose(Optional.empty(), "", ""),
                Act.TakeIn.Which.known(machine),
                Mud.DUSTY,
                Optional.empty(),
                Condition.SOUND,
                wanted,
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                "",
                Optional.empty()));
    }

    private void goOn() {
        for (Person person : day.shop().people()) {
            if (day.isHere(person) && !isOnBreak(person)) {
                day.runningOf(person.id()).ifPresent(running -> finish(person, running));
                if (day.openEntryOf(person.id()).isEmpty() || isFree(person)) {
                    startSomething(person);
                }
            }
        }
    }

    /** Half past twelve is dinner for whoever can leave what they are on, and three o'clock is tea for one of them. */
    private boolean isOnBreak(Person person) {
        int minute = day.minuteOf(now) - DINNER;
        boolean isDinner = 0 <= minute && minute < person.name().length() * 5;
        boolean isTea = TEA <= minute && minute < TEA + 14 && person.name().length() == 5;
        if ((minute == 0 || isTea && minute == TEA)
                && day.runningOf(person.id()).isEmpty()) {
            does(new Act.TakeBreak(person.id(), isTea ? Activity.Break.Kind.REST : Activity.Break.Kind.MEAL));
        }
        return (isDinner || isTea) && day.runningOf(person.id()).isEmpty();
    }

    private boolean isFree(Person person) {
        return day.openEntryOf(person.id())
                .map(ClockEntry::activity)
                .filter(activity -> !(activity instanceof Activity.OnStay))
                .isPresent();
    }

    /** Some tasks take longer than the catalogue says, and some not so long. */
    private void finish(Person person, Day.Running running) {
        Task task = running.task();
        int minutes = Math.max(1, task.handsOn() * (7 + task.name().length() % 7) / 10);
        Instant since = task.progress().since().orElse(now);
        if (!since.plusSeconds(60L * minutes).isAfter(now)) {
            tries(new Act.Finish(person.id(), running.visit().id(), task.id(), Optional.of(Mark.GOOD)));
        }
    }

    private void startSomething(Person person) {
        for (Visit visit : day.visits()) {
            for (Task task : visit.tasks()) {
                if (visit.state().isOpen()
                        && !task.isDone()
                        && !task.progress().isRunning()
                        && tries(new Act.Start(person.id(), visit.id(), task.id(), Optional.empty()))) {
                    return;
                }
            }
        }
        if (day.openEntryOf(person.id())
                .map(ClockEntry::activity)
                .filter(Activity.OtherWork.class::isInstance)
                .isEmpty()) {
            Activity.OtherWork.Kind[] kinds = Activity.OtherWork.Kind.values();
            tries(new Act.DoOther(person.id(), kinds[person.name().length() % kinds.length]));
        }
    }

    private void putRight() {
        ClockEntry wrong = day.entries().stream()
                .filter(entry -> entry.activity() instanceof Activity.OtherWork && !entry.isOpen())
                .findFirst()
                .orElseThrow();
        does(new Act.Correct("P1", Optional.of(wrong.id()), Optional.empty(), "never was <there>"));
        does(new Act.Correct(
                "P1",
                Optional.empty(),
                Optional.of(new Act.Correct.Written(
                        "P4", new Activity.OtherWork(Activity.OtherWork.Kind.TRAINING), at(6, 20), at(6, 50))),
                "came early to be shown the wash pad & its drain"));
    }

    private void does(Act act) {
        Outcome outcome = Acts.apply(day, act, now);
        if (!(outcome instanceof Outcome.Done done)) {
            throw new AssertionError(act + " cannot be: " + outcome);
        }
        day = done.day();
    }

    private boolean tries(Act act) {
        if (Acts.apply(day, act, now) instanceof Outcome.Done done) {
            day = done.day();
            return true;
        }
        return false;
    }
}
