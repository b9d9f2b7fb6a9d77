package org.shedboard.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.shedboard.fit.LogNormal;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

/** A shop whose truth is known: what each sort of work takes there against the catalogue was drawn from what is taken to be usual. */
final class DrawnShop {
    static final double MACHINE = 0.18;
    static final double PERSON = 0.1;
    private static final double OWN = 0.25;
    static final double SPREAD = Math.sqrt(OWN * OWN + MACHINE * MACHINE + PERSON * PERSON);
    static final Expectation EXPECTED = new Expectation(
            Map.of(Sort.WASH, SPREAD, Sort.UNDERSIDE, SPREAD, Sort.TOPSIDE, SPREAD, Sort.REPAIR, SPREAD),
            MACHINE,
            PERSON,
            Set.of());
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);

    private final Random random;
    private final Map<Sort, Truth> truths = new EnumMap<>(Sort.class);
    private int visits;

    /** What one sort of work adds to the logarithm. */
    private record Truth(double shop, double[] mud, double[] depth, double[] ofClass, double[] person, double age) {
        double of(Case drawn) {
            double sum = shop + ofClass[drawn.classIndex] + person[drawn.personIndex] + age * (drawn.age - 8) / 10;
            for (int grade = 1; grade <= drawn.mud.grade(); grade++) {
                sum += mud[grade - 1];
            }
            for (int look = 1; look <= drawn.depth.ordinal(); look++) {
                sum += depth[look - 1];
            }
            return sum;
        }
    }

    private record Case(int classIndex, int personIndex, int age, Mud mud, Depth depth, LocalDate date) {
        Circumstances circumstances() {
            return new Circumstances(
                    "class-" + classIndex, mud, depth, OptionalInt.of(age), date, Map.of("P" + personIndex, 1.0));
        }
    }

    /** A piece of work with its true distribution. */
    record Piece(Lesson lesson, LogNormal truth) {}

    DrawnShop(long seed) {
        random = new Random(seed);
        for (Sort sort : Sort.values()) {
            truths.put(
                    sort,
                    new Truth(
                            Trait.SHOP.deviation() * random.nextGaussian(),
                            drawn(Trait.MUD, 3),
                            drawn(Trait.DEPTH, 2),
                            drawn(Trait.CLASS, 6),
                            drawn(Trait.PERSON, 4),
                            Trait.AGE.deviation() * random.nextGaussian()));
        }
    }

    private double[] drawn(Trait trait, int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = trait.deviation() * random.nextGaussian();
        }
        return values;
    }

    /** The stays of one visit: a wash where there is mud, the two looks, and a repair on every other one. */
    List<Piece> visit() {
        visits++;
        Mud mud = Mud.of(random.nextInt(4));
        Depth depth = Depth.values()[random.nextInt(3)];
        int classIndex = random.nextInt(6);
        int age = random.nextInt(17);
        LocalDate date = FIRST.plusDays(visits / 4);
        double machine = MACHINE * random.nextGaussian();
        List<Piece> pieces = new ArrayList<>();
        for (Sort sort : Sort.values()) {
            boolean isWanted = sort == Sort.WASH ? mud != Mud.CLEAN : sort != Sort.REPAIR || random.nextBoolean();
            if (isWanted) {
                Case drawn = new Case(classIndex, random.nextInt(4), age, mud, depth, date);
                pieces.add(piece(sort, drawn, machine));
            }
        }
        return pieces;
    }

    private Piece piece(Sort sort, Case drawn, double machine) {
        double catalogue = 20 + random.nextInt(100);
        double mu = Math.log(catalogue) + truths.get(sort).of(drawn);
        double day = PERSON * random.nextGaussian();
        double actual = Math.exp(mu + machine + day + OWN * random.nextGaussian());
        return new Piece(
                new Lesson("V" + visits, sort, drawn.circumstances(), catalogue, actual), new LogNormal(mu, SPREAD));
    }

    List<Piece> visitsWith(int pieces) {
        List<Piece> all = new ArrayList<>();
        while (all.size() < pieces) {
            all.addAll(visit());
        }
        return all.subList(0, pieces);
    }
}
