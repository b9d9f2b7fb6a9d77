package org.shedboard.learn;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Times what learning costs, among the finished work of a drawn shop. Run by hand, through the harness's own main class. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class LearnSpeed {
    private static final int MANY = 20_000;
    private static final int OF_A_YEAR = 1_500;

    private List<Lesson> many;
    private List<Lesson> ofAYear;
    private Learned learned;
    private Lesson next;

    @Setup
    public void draw() {
        List<Lesson> drawn = new DrawnShop(1)
                .visitsWith(MANY + 1).stream().map(DrawnShop.Piece::lesson).toList();
        many = drawn.subList(0, MANY);
        ofAYear = drawn.subList(0, OF_A_YEAR);
        learned = Learned.of(DrawnShop.EXPECTED, many);
        next = drawn.get(MANY);
    }

    @Benchmark
    public double estimateWithItsStory() {
        Circumstances at = next.circumstances();
        double safe = learned.minutes(next.sort(), 60, at).quantile(Said.SAFE);
        return safe - learned.story(next.sort(), 60, at).likelyMinutes();
    }

    @Benchmark
    public Learned updateByOneLesson() {
        return learned.after(next);
    }

    @Benchmark
    public Learned refitOfTwentyThousand() {
        return Learned.of(DrawnShop.EXPECTED, many);
    }

    @Benchmark
    public List<Said> hindsightOfFifteenHundred() {
        return Hindsight.of(DrawnShop.EXPECTED, ofAYear);
    }
}
