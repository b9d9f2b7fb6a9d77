package org.shedboard.forecast;

import java.time.LocalDate;
import java.util.Set;
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
import org.shedboard.day.Beginning;
import org.shedboard.day.Day;
import org.shedboard.estimate.Estimate;
import org.shedboard.files.Seed;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Visit;

/** Times what one visit's forecast and its explanation cost after the demonstration's history. Run by hand, as {@code LearnSpeed}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class ForecastSpeed {
    private Grounds grounds;
    private Visit visit;

    @Setup
    public void read() {
        Day day = Beginning.of(SmallShop.CATALOGUE, Seed.shop(SmallShop.CATALOGUE), LocalDate.EPOCH)
                .day();
        grounds = day.books().grounds();
        visit = SmallShop.visit("V", Mud.CAKED, Depth.FULL, "full-quad", "brakes-front");
    }

    private VisitForecast forecast() {
        return VisitForecast.of(grounds, SmallShop.machine("quad"), visit, SmallShop.DATE);
    }

    @Benchmark
    public Estimate.Range forecastOfAVisit() {
        return forecast().range();
    }

    @Benchmark
    public Explanation explanationOfAVisit() {
        return Explanation.of(forecast(), Set.of());
    }
}
