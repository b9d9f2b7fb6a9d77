package org.shedboard.register;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.shedboard.register.NextDue.By;
import org.shedboard.register.Reading.Unit;
import org.shedboard.shop.Machine;
import org.shedboard.shop.ServiceInterval;

/**
 * When machines are to be serviced, from what was read on their meters and what was done to them.
 *
 * <p>Each service of a machine's class counts from the last time it was done, by itself or within a bigger one; one that was never done counts
 * from the first service of any kind. The first that comes due, by hours, kilometres or months, says when; what is done then is the biggest
 * service whose time has come by that day. If the last service was not a full one, the next is (common practice, no source). A machine that
 * we never serviced is due for nothing: we do not know when it was.
 */
public final class Upkeep {
    /** A service may be done a tenth of its hours or kilometres early or late; of its months nothing (TM 9-2320-387-24-1, paragraph 2-9). */
    private static final double TOLERANCE = 0.1;

    private final Map<String, ServicePlan> plans;
    private final Map<String, List<Machine>> alike;
    private final Map<String, List<Serviced>> serviced;
    private final Map<String, List<Reading>> readings;
    private final ZoneId zone;
    /** What was worked out so far, by machine and by class: one that is never asked about costs nothing. */
    private final Map<String, Map<Unit, Meter>> meters = new HashMap<>();

    private final Map<String, Map<Unit, Optional<UsePerDay>>> usual = new HashMap<>();

    private Upkeep(Map<String, ServicePlan> plans, List<Machine> machines, Logbook logbook, ZoneId zone) {
        this.plans = plans;
        this.zone = zone;
        alike = machines.stream().collect(Collectors.groupingBy(Machine::classId));
        serviced = logbook.serviced().stream()
                .sorted(Comparator.comparing(Serviced::finished))
                .collect(Collectors.groupingBy(Serviced::machineId));
        readings = logbook.readings().stream().collect(Collectors.groupingBy(Reading::machineId));
    }

    /** @param plans the services of each class, by its id */
    public static Upkeep of(Map<String, ServicePlan> plans, List<Machine> machines, Logbook logbook, ZoneId zone) {
        return new Upkeep(plans, machines, logbook, zone);
    }

    private static Map<Unit, Meter> byUnit(List<Reading> readings) {
        Map<Unit, Meter> found = new EnumMap<>(Unit.class);
        for (Unit unit : Unit.values()) {
            Meter.of(readings.stream().filter(each -> each.unit() == unit).toList())
                    .ifPresent(meter -> found.put(unit, meter));
        }
        return found;
    }

    private Map<Unit, Optional<UsePerDay>> usual(List<Machine> machines) {
        Map<Unit, Optional<UsePerDay>> uses = new EnumMap<>(Unit.class);
        for (Unit unit : Unit.values()) {
            uses.put(
                    unit,
                    UsePerDay.usual(machines.stream()
                            .flatMap(machine -> meterOf(machine.id(), unit).flatMap(Meter::use).stream())
                            .toList()));
        }
        return uses;
    }

    /** What its readings in a unit tell; empty where there are none. */
    public Optional<Meter> meterOf(String machineId, Unit unit) {
        return Optional.ofNullable(meters.computeIfAbsent(machineId, id -> byUnit(readings.getOrDefault(id, List.of())))
                .get(unit));
    }

    /** What its readings tell, a meter for each unit that it was read in. */
    public List<Meter> metersOf(String machineId) {
        return Arrays.stream(Unit.values())
                .flatMap(unit -> meterOf(machineId, unit).stream())
                .toList();
    }

    /** What the machines of a class usually run. */
    public Optional<UsePerDay> usualOf(String classId, Unit unit) {
        Map<Unit, Optional<UsePerDay>> known = usual.get(classId);
        if (known == null) {
            known = usual(alike.getOrDefault(classId, List.of()));
            usual.put(classId, known);
        }
        return known.get(unit);
    }

    /** What a machine runs: by its own readings, else as others of its class do. */
    public Optional<UsePerDay> useOf(Machine machine, Unit unit) {
        return meterOf(machine.id(), unit).flatMap(Meter::use).or(() -> usualOf(machine.classId(), unit));
    }

    /** Its last service of any kind. */
    public Optional<Serviced> lastService(Machine machine) {
        List<Serviced> all = services(machine);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** The last time it was here and finished, whatever for. */
    public Optional<Serviced> lastVisit(String machineId) {
        List<Serviced> all = serviced.getOrDefault(machineId, List.of());
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** Whether these works do what is due. */
    public boolean isDoneBy(Machine machine, NextDue due, List<String> workIds) {
        return planOf(machine).doneBy(workIds).contains(due.workId());
    }

    private ServicePlan planOf(Machine machine) {
        return plans.getOrDefault(machine.classId(), new ServicePlan(Map.of()));
    }

    private List<Serviced> services(Machine machine) {
        ServicePlan plan = planOf(machine);
        return serviced.getOrDefault(machine.id(), List.of()).stream()
                .filter(visit -> !plan.doneBy(visit.workIds()).isEmpty())
                .toList();
    }

    /** When the machine is due next, and for what; empty where no service of it is known. */
    public Optional<NextDue> nextDue(Machine machine, Instant now) {
        List<Serviced> services = services(machine);
        if (services.isEmpty()) {
            return Optional.empty();
        }
        ServicePlan plan = planOf(machine);
        List<NextDue> dues = new ArrayList<>();
        plan.services()
                .forEach((workId, interval) ->
                        dues.addAll(dues(machine, workId, interval, lastOf(plan, workId, services), now)));
        return dues.stream()
                .min(Comparator.comparing(due -> due.dates().likely()))
                .map(first -> named(plan, services, dues, first));
    }

    private static Serviced lastOf(ServicePlan plan, String workId, List<Serviced> services) {
        Serviced last = services.get(0);
        for (Serviced service : services) {
            last = plan.doneBy(service.workIds()).contains(workId) ? service : last;
        }
        return last;
    }

    /** The first that comes due, with the biggest service that is due by then, and no later than any of them. */
    private static NextDue named(ServicePlan plan, List<Serviced> services, List<NextDue> dues, NextDue first) {
        Serviced last = services.get(services.size() - 1);
        Optional<String> full =
                plan.full().filter(id -> !plan.doneBy(last.workIds()).contains(id));
        String workId = full.orElseGet(() -> dues.stream()
                .filter(due -> !due.window().opens().isAfter(first.dates().likely()))
                .map(NextDue::workId)
                .max(Comparator.comparingInt(plan::size))
                .orElse(first.workId()));
        NextDue.Dates dates = dues.stream()
                .map(NextDue::dates)
                .reduce(NextDue.Dates::orSooner)
                .orElseThrow();
        NextDue.Window window = dues.stream()
                .map(NextDue::window)
                .reduce(NextDue.Window::orSooner)
                .orElseThrow();
        return new NextDue(first.machineId(), workId, first.by(), first.dial(), dates, window);
    }

    private List<NextDue> dues(Machine machine, String workId, ServiceInterval interval, Serviced last, Instant now) {
        List<NextDue> found = new ArrayList<>();
        byMeter(machine, workId, interval.hours(), Unit.HOURS, last, now).ifPresent(found::add);
        byMeter(machine, workId, interval.kilometres(), Unit.KILOMETRES, last, now)
                .ifPresent(found::add);
        if (interval.months().isPresent()) {
            LocalDate due = LocalDate.ofInstant(last.finished(), zone)
                    .plusMonths(interval.months().getAsInt());
            found.add(new NextDue(
                    machine.id(),
                    workId,
                    By.MONTHS,
                    Optional.empty(),
                    new NextDue.Dates(due, due, due),
                    new NextDue.Window(due, due)));
        }
        return found;
    }

    private Optional<NextDue> byMeter(
            Machine machine, String workId, OptionalInt every, Unit unit, Serviced last, Instant now) {
        Optional<Meter> meter = meterOf(machine.id(), unit);
        Optional<UsePerDay> use = useOf(machine, unit);
        if (every.isEmpty() || meter.isEmpty() || use.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Reckoning(meter.get(), use.get(), Days.of(last.arrived()), every.getAsInt(), zone)
                .due(machine.id(), workId, now));
    }

    /** One service reckoned by one meter. */
    private record Reckoning(Meter meter, UsePerDay use, double lastDay, int every, ZoneId zone) {
        NextDue due(String machineId, String workId, Instant now) {
            double run = meter.runBy(lastDay, use.likely());
            double dial = meter.dialAt(run + every);
            double shows = meter.dialAt(meter.runBy(Days.of(now), use.likely()));
            return new NextDue(
                    machineId,
                    workId,
                    meter.last().unit() == Unit.HOURS ? By.HOURS : By.KILOMETRES,
                    Optional.of(new NextDue.Dial(meter.last().unit(), dial, shows)),
                    new NextDue.Dates(
                            dateOf(run + every, use.high()),
                            dateOf(run + every, use.likely()),
                            dateOf(run + every, use.low())),
                    new NextDue.Window(
                            dateOf(run + every * (1 - TOLERANCE), use.likely()),
                            dateOf(run + every * (1 + TOLERANCE), use.likely())));
        }

        private LocalDate dateOf(double run, double perDay) {
            return Days.date(meter.dayOf(run, perDay), zone);
        }
    }

    /** Whether what an owner said when rung lets the machine be for now. */
    public boolean isSettled(Machine machine, List<Rung> rung, Instant now) {
        Instant since = lastService(machine).map(Serviced::finished).orElse(Instant.MIN);
        return rung.stream()
                .filter(each -> each.machineId().equals(machine.id()))
                .max(Comparator.comparing(Rung::at))
                .filter(each -> each.settles(since, now, zone))
                .isPresent();
    }
}
