package org.shedboard.forecast;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Work;
import org.shedboard.files.Seed;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Learned;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** A shop with the demonstration's catalogue and people whose finished work was drawn without any order in it. */
final class RandomShop {
    static final Catalogue CATALOGUE = Seed.catalogue();
    static final List<Person> PEOPLE = Seed.shop(CATALOGUE).shop().people();
    static final LocalDate TODAY = LocalDate.of(2026, 5, 12);

    private final Random random;

    RandomShop(long seed) {
        random = new Random(seed);
    }

    /** A shop that has learned: the fewer lessons, the wilder what it believes of mud and depth. */
    Experience experience() {
        List<Lesson> lessons = new ArrayList<>();
        int count = 5 + random.nextInt(60);
        for (int i = 0; i < count; i++) {
            lessons.add(lesson("V" + i / 3, TODAY.minusDays(count - i)));
        }
        return Experience.of(CATALOGUE, PEOPLE, lessons, TODAY);
    }

    private Lesson lesson(String visitId, LocalDate date) {
        Circumstances under = new Circumstances(
                any(CATALOGUE.classes()).id(),
                any(List.of(Mud.values())),
                any(List.of(Depth.values())),
                OptionalInt.of(random.nextInt(15)),
                date,
                Map.of(any(PEOPLE).id(), 1.0));
        double catalogue = 20 + random.nextInt(100);
        return new Lesson(
                visitId,
                any(List.of(Sort.values())),
                under,
                catalogue,
                catalogue * Math.exp(0.5 * random.nextGaussian()));
    }

    /** A visit of any machine, for one or two lines of work. */
    VisitForecast forecast(Experience experience) {
        MachineClass machineClass = any(CATALOGUE.classes());
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(2); i++) {
            lines.add(line("L" + i, any(CATALOGUE.worksFor(machineClass.id())), Payer.OWNER));
        }
        Visit visit = visit(machineClass.id(), any(List.of(Mud.values())), any(List.of(Depth.values())), lines);
        return forecast(experience.learned(), PEOPLE, visit);
    }

    static VisitForecast forecast(Learned learned, List<Person> people, Visit visit) {
        return VisitForecast.of(new Grounds(CATALOGUE, people, learned), machine(visit.machineId()), visit, TODAY);
    }

    static Line line(String id, Work work, Payer payer) {
        return new Line(id, work.id(), work.name(), payer, List.of());
    }

    /** A machine of that class, which is its name too. */
    static Machine machine(String classId) {
        return new Machine(classId, "O1", classId, "", OptionalInt.of(2020), "", 300, OptionalInt.empty());
    }

    static Visit visit(String classId, Mud mud, Depth depth, List<Line> lines) {
        Intake intake = new Intake(Instant.parse("2026-05-12T00:00:00Z"), mud, depth, Condition.SOUND, "");
        return new Visit(
                "V1000",
                classId,
                OptionalInt.of(1),
                VisitState.IN_YARD,
                intake,
                lines,
                new Estimator(CATALOGUE).estimate(classId, intake, lines).stays(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private <T> T any(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
