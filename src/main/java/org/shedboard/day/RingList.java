package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.Work;
import org.shedboard.register.NextDue;
import org.shedboard.register.Rung;
import org.shedboard.register.Serviced;
import org.shedboard.register.Upkeep;
import org.shedboard.register.WorkLoad;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Payer;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * Whom to ring: the owners of machines that are due for a service by a date and are neither here nor expected, the most overdue first.
 *
 * @param until the day after the last by which they are due
 */
public record RingList(LocalDate today, LocalDate until, List<Call> calls) {
    /**
     * One machine to ring about.
     *
     * @param load what it would bring, by the catalogue, if it came as muddy as last time
     * @param rung what the owner said when last rung since its last service
     */
    public record Call(Machine machine, Owner owner, Work work, NextDue due, WorkLoad load, Optional<Rung> rung) {}

    public RingList {
        calls = List.copyOf(calls);
    }

    /** What is due within so many weeks from today. */
    public static RingList of(Day day, Instant now, int weeks) {
        LocalDate today = LocalDate.ofInstant(now, day.zone());
        LocalDate until = today.plusWeeks(weeks);
        return new RingList(today, until, new Making(day, now).calls(until));
    }

    /** All that would come if everybody did. */
    public WorkLoad load() {
        return calls.stream().map(Call::load).reduce(WorkLoad.NONE, WorkLoad::plus);
    }

    /** The list being made; what work takes is put together once for machines that are alike. */
    private static final class Making {
        private final Day day;
        private final Instant now;
        private final Upkeep upkeep;
        private final Map<String, Owner> owners;
        private final Map<String, List<Rung>> rung;
        private final Map<Kind, WorkLoad> loads = new HashMap<>();

        private record Kind(String classId, String workId, Mud mud) {}

        Making(Day day, Instant now) {
            Books books = day.books();
            this.day = day;
            this.now = now;
            upkeep = books.upkeep();
            owners = books.owners().stream().collect(Collectors.toMap(Owner::id, Function.identity()));
            rung = books.register().logbook().rung().stream().collect(Collectors.groupingBy(Rung::machineId));
        }

        List<Call> calls(LocalDate until) {
            Set<String> with = withUs();
            List<Call> calls = new ArrayList<>();
            for (Machine machine : day.books().machines()) {
                if (!with.contains(machine.id())) {
                    upkeep.nextDue(machine, now)
                            .filter(due -> due.dates().likely().isBefore(until))
                            .filter(due -> !upkeep.isSettled(machine, rungAbout(machine), now))
                            .ifPresent(due -> calls.add(call(machine, due)));
                }
            }
            calls.sort(Comparator.comparing((Call call) -> call.due().dates().likely())
                    .thenComparing(call -> call.owner().name())
                    .thenComparing(call -> call.machine().id()));
            return calls;
        }

        /** Machines that are here, or booked to come. */
        private Set<String> withUs() {
            return day.visits().stream()
                    .filter(visit -> visit.state().isOpen() || visit.state().isHere())
                    .map(Visit::machineId)
                    .collect(Collectors.toCollection(HashSet::new));
        }

        private List<Rung> rungAbout(Machine machine) {
            return rung.getOrDefault(machine.id(), List.of());
        }

        private Call call(Machine machine, NextDue due) {
            Work work = day.books().catalogue().expectWork(due.workId());
            Mud mud = upkeep.lastVisit(machine.id()).map(Serviced::mud).orElse(Mud.DUSTY);
            WorkLoad load = loads.computeIfAbsent(new Kind(machine.classId(), work.id(), mud), this::load);
            Instant since = upkeep.lastService(machine).map(Serviced::finished).orElse(Instant.EPOCH);
            Optional<Rung> last = rungAbout(machine).stream()
                    .filter(each -> each.at().isAfter(since))
                    .max(Comparator.comparing(Rung::at));
            return new Call(machine, owners.get(machine.ownerId()), work, due, load, last);
        }

        private WorkLoad load(Kind kind) {
            Work work = day.books().catalogue().expectWork(kind.workId());
            Intake intake = new Intake(now, kind.mud(), work.depth(), Condition.SOUND, "");
            List<Line> lines = List.of(new Line("L", work.id(), work.name(), Payer.OWNER, work.lineParts()));
            return new Estimator(day.books().catalogue())
                    .estimate(kind.classId(), intake, lines).stays().stream()
                            .map(Making::load)
                            .reduce(WorkLoad.NONE, WorkLoad::plus);
        }

        /** A stay stands in a place of the first kind that will do. */
        private static WorkLoad load(Stay stay) {
            Map<Skill, Integer> people = new EnumMap<>(Skill.class);
            int standing = 0;
            for (Task task : stay.tasks()) {
                people.merge(task.skill(), task.handsOn(), Integer::sum);
                standing += task.handsOn() + task.unattended();
            }
            Map<PlaceKind, Integer> places =
                    stay.needsPlace() ? Map.of(stay.kinds().get(0), standing) : Map.of();
            return new WorkLoad(people, places);
        }
    }
}
