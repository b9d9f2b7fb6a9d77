package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.shedboard.estimate.Catalogue;
import org.shedboard.forecast.Experience;
import org.shedboard.forecast.Foresight;
import org.shedboard.forecast.Grounds;
import org.shedboard.forecast.Lessons;
import org.shedboard.forecast.Suggestion;
import org.shedboard.forecast.Suggestions;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.Tally;
import org.shedboard.hours.TimeBook;
import org.shedboard.learn.Lesson;
import org.shedboard.register.Logbook;
import org.shedboard.register.Merged;
import org.shedboard.register.Register;
import org.shedboard.register.Shelf;
import org.shedboard.register.Upkeep;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Person;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Visit;
import org.shedboard.shop.Window;

/**
 * What the shop knows beyond the day.
 *
 * @param hoursRules how it counts hours
 * @param signers ids of the people who have a PIN to sign with
 * @param register what it remembers of machines from visit to visit
 * @param shelf what parts it has and waits for
 * @param foresight what its finished work taught it
 */
public record Books(
        Shop shop,
        Catalogue catalogue,
        List<Owner> owners,
        List<Machine> machines,
        HoursRules hoursRules,
        Set<String> signers,
        Register register,
        Shelf shelf,
        Foresight foresight) {
    public Books {
        owners = List.copyOf(owners);
        machines = List.copyOf(machines);
        signers = Set.copyOf(signers);
    }

    /** The books of a shop that remembers nothing yet. */
    public Books(
            Shop shop,
            Catalogue catalogue,
            List<Owner> owners,
            List<Machine> machines,
            HoursRules hoursRules,
            Set<String> signers) {
        this(
                shop,
                catalogue,
                owners,
                machines,
                hoursRules,
                signers,
                Register.EMPTY,
                Shelf.EMPTY,
                Foresight.none(catalogue, shop.people()));
    }

    public Optional<Owner> findOwner(String id) {
        return owners.stream().filter(owner -> owner.id().equals(id)).findFirst();
    }

    public Optional<Machine> findMachine(String id) {
        return machines.stream().filter(machine -> machine.id().equals(id)).findFirst();
    }

    public Machine expectMachine(String id) {
        return findMachine(id).orElseThrow(() -> new IllegalArgumentException("no machine %s".formatted(id)));
    }

    public Owner expectOwner(String id) {
        return findOwner(id).orElseThrow(() -> new IllegalArgumentException("no owner %s".formatted(id)));
    }

    public Machine machineOf(Visit visit) {
        return expectMachine(visit.machineId());
    }

    public Owner ownerOf(Visit visit) {
        return expectOwner(machineOf(visit).ownerId());
    }

    /** What a person is called; the id of one who is no longer of the shop. */
    public String nameOf(String personId) {
        return shop.findPerson(personId).map(Person::name).orElse(personId);
    }

    Books with(Owner owner) {
        return new Books(
                shop,
                catalogue,
                replaced(owners, owner, Owner::id),
                machines,
                hoursRules,
                signers,
                register,
                shelf,
                foresight);
    }

    Books with(Machine machine) {
        return new Books(
                shop,
                catalogue,
                owners,
                replaced(machines, machine, Machine::id),
                hoursRules,
                signers,
                register,
                shelf,
                foresight);
    }

    Books with(Logbook logbook) {
        return new Books(
                shop, catalogue, owners, machines, hoursRules, signers, register.with(logbook), shelf, foresight);
    }

    /** When machines are to be serviced; worked out for each machine when it is asked for. */
    public Upkeep upkeep() {
        return Upkeep.of(ServicePlans.of(catalogue), machines, register.logbook(), shop.zone());
    }

    /** Without the record that was merged. */
    Books with(Merged merged) {
        List<Machine> left = machines.stream()
                .filter(machine -> !machine.id().equals(merged.machine().id()))
                .toList();
        return new Books(shop, catalogue, owners, left, hoursRules, signers, register.plus(merged), shelf, foresight);
    }

    Books with(Catalogue next) {
        return new Books(shop, next, owners, machines, hoursRules, signers, register, shelf, foresight);
    }

    Books with(HoursRules rules) {
        return new Books(shop, catalogue, owners, machines, rules, signers, register, shelf, foresight);
    }

    public Books with(Register next) {
        return new Books(shop, catalogue, owners, machines, hoursRules, signers, next, shelf, foresight);
    }

    Books with(Shelf next) {
        return new Books(shop, catalogue, owners, machines, hoursRules, signers, register, next, foresight);
    }

    public Books with(Foresight next) {
        return new Books(shop, catalogue, owners, machines, hoursRules, signers, register, shelf, next);
    }

    /**
     * The same with what the finished ones among these visits taught.
     *
     * @param entries all there are on them, with the corrections to them
     */
    public Books learningFrom(List<Visit> visits, List<ClockEntry> entries, Instant now) {
        LocalDate today = LocalDate.ofInstant(now, shop.zone());
        Map<String, List<Window>> breaks = new LinkedHashMap<>();
        shop.people().forEach(person -> breaks.put(person.id(), person.breaks()));
        Tally tally =
                new TimeBook(shop.zone(), hoursRules, breaks, entries).tally(LocalDate.MIN, today.plusDays(1), now);
        List<Lesson> lessons = Lessons.of(catalogue, shop, machines, visits, tally);
        Experience grown = experience().grown(catalogue, shop.people(), lessons, today);
        return with(foresight.with(grown.clocked(catalogue, shop, machines, visits, tally)));
    }

    public Experience experience() {
        return foresight.experience();
    }

    /** The figures of the catalogue that finished work contradicts, the strongest first. */
    public List<Suggestion> suggestions() {
        return Suggestions.of(catalogue, experience());
    }

    /** What forecasts are made from. */
    public Grounds grounds() {
        return new Grounds(catalogue, shop.people(), experience().learned());
    }

    /** The list with this value in the place of the one with the same id, or at the end. */
    static <T> List<T> replaced(List<T> all, T value, Function<T, String> id) {
        List<T> next = new ArrayList<>(all);
        for (int i = 0; i < next.size(); i++) {
            if (id.apply(next.get(i)).equals(id.apply(value))) {
                next.set(i, value);
                return next;
            }
        }
        next.add(value);
        return next;
    }
}
