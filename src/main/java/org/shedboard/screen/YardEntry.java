package org.shedboard.screen;

import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.day.Riding;
import org.shedboard.estimate.Estimate;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/** What the yard table says of one machine, each column as it is read. */
public final class YardEntry {
    private final Outlook outlook;
    private final Day day;
    private final Visit visit;

    public YardEntry(Outlook outlook, Visit visit) {
        this.outlook = outlook;
        this.day = outlook.day();
        this.visit = visit;
    }

    /** Whether the plan has it ready after the time that was promised. */
    public boolean isLate() {
        return visit.promise()
                .flatMap(promise -> outlook.readyAt(visit.id()).map(ready -> ready.isAfter(promise.at())))
                .orElse(false);
    }

    public String tag() {
        return PlaceStatus.tagOf(visit);
    }

    /** Whether the machine is not to be ridden. */
    public boolean isStopped() {
        return Riding.isStopped(day, visit);
    }

    /** The tag, marked where the machine is not to be ridden: what needs the foreman says why. */
    String markedTag() {
        return (isStopped() ? "!" : "") + tag();
    }

    public String owner() {
        return day.ownerOf(visit).name();
    }

    public String machine() {
        Machine machine = day.machineOf(visit);
        return machine.label() + " ("
                + day.books().catalogue().expectClass(machine.classId()).name() + ")";
    }

    public String label() {
        return day.machineOf(visit).label();
    }

    public String mud() {
        return Words.say(visit.intake().mud());
    }

    public String depth() {
        return Words.say(visit.intake().depth());
    }

    String shortDepth() {
        return Words.say("depth.short." + visit.intake().depth());
    }

    /** Likely and safe minutes of what is left to do. */
    public String minutes() {
        Optional<Estimate.Range> left = rangeLeft();
        return left.map(range -> range.likely() + "/" + range.safe()).orElse("");
    }

    /** Likely and safe minutes of what is left to do; empty when nothing is. */
    public Optional<Estimate.Range> rangeLeft() {
        return outlook.rangeLeft(visit.id());
    }

    /** Where it stands, or what it waits for and until when. */
    public String where() {
        if (visit.state() == VisitState.HELD || visit.state() == VisitState.DONE) {
            return Words.say(visit.state());
        }
        Optional<String> standing = visit.standsIn();
        if (standing.isPresent()) {
            return Words.say("sheet.place", standing.get());
        }
        return visit.state() == VisitState.BOOKED
                ? Words.say(visit.state()) + " " + arrival()
                : nextTime().map(this::nextStart).orElse("");
    }

    public String ready() {
        return outlook.readyAt(visit.id()).map(at -> Clocks.sayTime(day, at)).orElse("");
    }

    public String promise() {
        return visit.promise().map(said -> Clocks.sayTime(day, said.at())).orElse("");
    }

    public String chance() {
        OptionalInt chance = outlook.chanceOfPromise(visit);
        return chance.isPresent() ? chance.getAsInt() + "%" : "";
    }

    /** The time today; of any other day there is room for the weekday. */
    private String arrival() {
        ZonedDateTime arrives = visit.intake().arrives().atZone(day.zone());
        return (arrives.toLocalDate().equals(day.date()) ? When.CLOCK : When.WEEKDAY).say(arrives);
    }

    /** When and by whom the plan has its first task that is not done. */
    public Optional<Plan.TaskTime> nextTime() {
        return outlook.plan().tasks().stream()
                .filter(time ->
                        time.job().equals(visit.id()) && !outlook.taskOf(time).isDone())
                .min(Comparator.comparingInt(outlook::handsFrom));
    }

    private String nextStart(Plan.TaskTime time) {
        return placeOf(time).map(place -> place + " ").orElse("")
                + Clocks.sayTime(day, day.instantOf(outlook.handsFrom(time)));
    }

    /** Where the plan has a task; empty for work that takes no place. */
    public Optional<String> placeOf(Plan.TaskTime time) {
        Stay stay = visit.stays().get(time.stay());
        return stay.needsPlace()
                ? outlook.plan().findStay(visit.id(), time.stay()).map(Plan.StayPlace::place)
                : Optional.empty();
    }
}
