package org.shedboard.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shedboard.pack.numbers.Chance;

/**
 * Days of a workshop as it might be, each from a seed: wash pads, hoists and floor; mechanics, yard hands and all-rounders; services,
 * quick oil changes, blade jobs and repairs. All numbers are invented.
 */
public final class WorkshopDays {
    /** Hands-on minutes as a share of the first day's shift minutes. */
    public static final double FAIR = 0.85;

    public static final double TIGHT = 1.10;

    private static final int DAY = 1440;
    private static final int DAYS = 3;
    private static final int TONIGHT = 540;
    private static final int TOMORROW_NIGHT = 1980;
    private static final int[] MASSES = {220, 320, 680, 760, 1400};
    private static final int[] ARRIVALS = {30, 60, 90, 120, 180, 240};

    private final int machines;
    private final Chance chance;
    private final List<Problem.Person> people = new ArrayList<>();
    private final Map<String, Double> slow = new LinkedHashMap<>();

    private WorkshopDays(int machines, long seed) {
        this.machines = machines;
        chance = Chance.of(seed, "workshop " + machines);
    }

    /**
     * A day before its first minute.
     *
     * @param machines how many are drawn; the last ones are dropped until the load is kept
     * @param load {@link #FAIR} or {@link #TIGHT}
     */
    public static Problem of(int machines, double load, long seed) {
        return new WorkshopDays(machines, seed).day(load);
    }

    /** The same kind of day with all else a day file can say: closed places, pins, two-person tasks, spreads, sign-offs by others. */
    public static Problem rich(int machines, double load, long seed) {
        Problem plain = of(machines, load, seed);
        return new RichDay(plain, Chance.of(seed, "rich")).day();
    }

    private Problem day(double load) {
        List<Problem.Place> places = places();
        int count = Math.max(2, Math.min(20, (int) (machines / 3.2 + 0.4)));
        for (int index = 0; index < count; index++) {
            people.add(person(index));
        }
        List<Problem.Job> jobs = new ArrayList<>();
        for (int index = 1; index <= machines; index++) {
            jobs.add(job("J" + index));
        }
        int room = (int) (load * firstDayMinutes());
        while (jobs.size() > 1 && handsOn(jobs) > room) {
            jobs.remove(jobs.size() - 1);
        }
        return Problem.of(0, DAYS * DAY, places, people, jobs);
    }

    private int firstDayMinutes() {
        return people.stream()
                .flatMap(person -> person.shifts().stream())
                .filter(span -> span.to() <= DAY)
                .mapToInt(Span::minutes)
                .sum();
    }

    private static int handsOn(List<Problem.Job> jobs) {
        return jobs.stream()
                .flatMap(job -> job.stays().stream())
                .flatMap(stay -> stay.tasks().stream())
                .mapToInt(Problem.Task::handsOn)
                .sum();
    }

    private List<Problem.Place> places() {
        List<Problem.Place> places = new ArrayList<>();
        for (int index = 1; index <= (machines < 20 ? 1 : 2); index++) {
            places.add(Problem.Place.of("W" + index, "wash"));
        }
        int[] rated = {2500, 3500, 1000};
        for (int index = 1; index <= (machines < 10 ? 1 : machines < 20 ? 2 : 3); index++) {
            int kg = index == 1 ? 2500 : rated[chance.below(3)];
            places.add(Problem.Place.of("H" + index, "hoist").withRatedKg(kg));
        }
        for (int index = 1; index <= Math.max(1, machines / 7); index++) {
            places.add(Problem.Place.of("F" + index, "floor"));
        }
        return places;
    }

    /** Every third is an all-rounder who signs off, every third a yard hand, every third a mechanic. */
    private Problem.Person person(int index) {
        String id = "P" + (index + 1);
        Set<String> skills = new LinkedHashSet<>(List.of("wash"));
        if (index % 3 != 1 || chance.below(2) == 0) {
            skills.add("hoist");
        }
        if (index % 3 != 1) {
            skills.add("service");
        }
        if (index % 3 == 0) {
            skills.add("sign-off");
        }
        if (index % 3 == 1) {
            slow.put(id, 1.2 + 0.1 * chance.below(5));
        }
        return withHours(id, skills);
    }

    private Problem.Person withHours(String id, Set<String> skills) {
        int start = chance.below(4) == 0 ? 30 : 0;
        int lunch = 300 + 30 * chance.below(2);
        int knockOff = 540 + 30 * chance.below(2);
        List<Span> shifts = new ArrayList<>();
        List<Span> overtime = new ArrayList<>();
        for (int day = 0; day < DAYS * DAY; day += DAY) {
            shifts.add(Span.of(day + start, day + 180));
            shifts.add(Span.of(day + 195, day + lunch));
            shifts.add(Span.of(day + lunch + 30, day + knockOff));
            overtime.add(Span.of(day + knockOff, day + knockOff + 120));
        }
        return new Problem.Person(id, skills, shifts, overtime, 0);
    }

    private Problem.Job job(String id) {
        int arrives = chance.below(20) < 11 ? 0 : ARRIVALS[chance.below(ARRIVALS.length)];
        int share = chance.below(15);
        Problem.Job job = Problem.Job.of(id, stays().toArray(Problem.Stay[]::new))
                .withWeight(share < 9 ? 1 : share < 13 ? 2 : 4)
                .withMassKg(MASSES[chance.below(MASSES.length)])
                .withArrives(arrives);
        return switch (chance.below(14)) {
            case 0, 1 -> job;
            case 2, 3 -> job.withPromise(TOMORROW_NIGHT);
            case 4, 5 -> job.withPromise(Math.max(300, arrives + 300));
            case 6, 7 -> job.withPromise(Math.max(420, arrives + 300));
            default -> job.withPromise(Math.max(TONIGHT, arrives + 300));
        };
    }

    private List<Problem.Stay> stays() {
        List<Problem.Stay> stays = new ArrayList<>();
        if (chance.below(7) > 0) {
            stays.add(wash());
        }
        int kind = chance.below(20);
        if (kind < 10) {
            addService(stays);
        } else if (kind < 14) {
            stays.add(oilChange());
        } else if (kind < 18) {
            stays.add(blades());
        } else {
            stays.add(repair());
        }
        return stays;
    }

    private Problem.Stay wash() {
        boolean isMuddy = chance.below(3) > 0;
        if (!isMuddy) {
            return Problem.Stay.of("wash", task("wash", "wash", 14, 20).withUnattended(5));
        }
        int most = chance.below(4) == 0 ? 142 : 80;
        return Problem.Stay.of(
                "wash",
                task("soak", "wash", 5, 5).withUnattended(10),
                task("wash", "wash", 40, most).withUnattended(5));
    }

    private void addService(List<Problem.Stay> stays) {
        List<Problem.Task> under = new ArrayList<>(List.of(
                task("up", "hoist", 4, 8),
                task("drain", "service", 4, 9).withUnattended(20).withAfter("up"),
                task("under", "service", 19, 59).withAfter("up"),
                task("grease", "wash", 10, 50).withAfter("up"),
                task("plug", "service", 5, 10).withAfter("drain", "under", "grease")));
        boolean hasBoot = chance.below(3) == 0;
        if (hasBoot) {
            under.add(task("boot", "service", 30, 75).withAfter("under"));
        }
        Problem.Task down = task("down", "hoist", 3, 6);
        under.add(hasBoot ? down.withAfter("plug", "boot") : down.withAfter("plug"));
        stays.add(Problem.Stay.of("hoist", under.toArray(Problem.Task[]::new)));
        stays.add(Problem.Stay.of(
                List.of("floor", "hoist"),
                task("fill", "service", 5, 14).withUnattended(10).withAfter(),
                task("air", "service", 5, 30).withAfter(),
                task("fluids", "wash", 8, 30).withAfter(),
                task("sign", "sign-off", 4, 15).withAfter("fill", "air", "fluids")));
        if (chance.below(2) == 0) {
            stays.add(Problem.Stay.nowhere(task("drive", "sign-off", 10, 20)));
        }
    }

    private Problem.Stay oilChange() {
        return Problem.Stay.of(
                "hoist",
                task("up", "hoist", 4, 8),
                task("drain", "service", 4, 9).withUnattended(15),
                task("plug", "service", 5, 10),
                task("fill", "service", 5, 14).withUnattended(10),
                task("level", "service", 4, 8));
    }

    private Problem.Stay blades() {
        return Problem.Stay.of(
                List.of("floor", "hoist"),
                task("drain", "service", 4, 9).withUnattended(10).withAfter(),
                task("blades", "service", 10, 25).withAfter(),
                task("fill", "service", 5, 14).withAfter("drain"),
                task("sign", "sign-off", 4, 15).withAfter("blades", "fill"));
    }

    /** Parts may come later in the day. */
    private Problem.Stay repair() {
        Problem.Task fit = task("fit", "service", 30, 120);
        return Problem.Stay.of(
                chance.below(2) == 0 ? List.of("hoist") : List.of("floor", "hoist"),
                task("strip", "service", 20, 60),
                chance.below(5) == 0 ? fit.withNotBefore(220 + chance.below(170)) : fit,
                task("check", "sign-off", 8, 15));
    }

    private Problem.Task task(String id, String skill, int least, int most) {
        int minutes = least + chance.below(most - least + 1);
        Map<String, Integer> others = new LinkedHashMap<>();
        for (Problem.Person person : people) {
            if (slow.containsKey(person.id()) && person.skills().contains(skill)) {
                others.put(person.id(), (int) Math.ceil(minutes * slow.get(person.id())));
            }
        }
        return Problem.Task.of(id, skill, minutes).withHandsOnBy(others);
    }

    /** Makes a plain day a rich one. */
    private static final class RichDay {
        private final Problem plain;
        private final Chance chance;

        RichDay(Problem plain, Chance chance) {
            this.plain = plain;
            this.chance = chance;
        }

        Problem day() {
            List<Problem.Place> places = plain.places().stream()
                    .map(place -> chance.below(4) == 0 ? place.withClosed(span()) : place)
                    .toList();
            List<Problem.Person> people = plain.people().stream()
                    .map(person -> person.withSharedSpread(0.05 * chance.below(4)))
                    .toList();
            List<Problem.Job> jobs = plain.jobs().stream().map(this::job).toList();
            return plain.withPlaces(places).withPeople(people).withJobs(jobs);
        }

        private Span span() {
            int from = 60 + chance.below(400);
            return Span.of(from, from + 30 + chance.below(180));
        }

        private Problem.Job job(Problem.Job job) {
            List<Problem.Stay> stays = new ArrayList<>();
            for (Problem.Stay stay : job.stays()) {
                List<Problem.Task> tasks = stay.tasks().stream()
                        .map(task -> task(job, task).withSpread(0.05 + 0.05 * chance.below(8)))
                        .toList();
                Problem.Stay changed = stay.withTasks(tasks);
                stays.add(chance.below(12) == 0 ? pinned(changed, job) : changed);
            }
            return job.withStays(stays).withSharedSpread(0.05 * chance.below(5));
        }

        private Problem.Stay pinned(Problem.Stay stay, Problem.Job job) {
            Optional<Problem.Place> place = plain.places().stream()
                    .filter(one -> stay.kinds().contains(one.kind()) && job.massKg() <= one.ratedKg())
                    .findFirst();
            return place.map(one -> stay.withPlace(one.id())).orElse(stay);
        }

        private Problem.Task task(Problem.Job job, Problem.Task task) {
            List<String> able = plain.people().stream()
                    .filter(person -> person.skills().contains(task.skill()))
                    .map(Problem.Person::id)
                    .toList();
            boolean hasFill = job.stays().stream().anyMatch(stay -> stay.indexOf("fill") >= 0);
            if (task.id().equals("sign") && hasFill && able.size() > 1) {
                return task.withNotBy("fill");
            }
            return switch (chance.below(24)) {
                case 0 -> task.withPerson(able.get(chance.below(able.size())));
                case 1, 2 -> able.size() > 1 ? task.withPeople(2) : task;
                case 3 -> task.withNotBefore(chance.below(300));
                case 4 -> task.skill().equals("wash") ? task.withAt(240 + chance.below(200)) : task;
                default -> task;
            };
        }
    }
}
