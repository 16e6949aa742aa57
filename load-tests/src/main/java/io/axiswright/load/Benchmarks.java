package io.axiswright.load;

import io.axiswright.engine.braking.BrakingRatio;
import io.axiswright.engine.duty.ChoosingRatio;
import io.axiswright.engine.topology.LayoutRatio;
import java.io.IOException;
import java.util.concurrent.ExecutionException;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs what it is told to, {@code study}, {@code scaling}, {@code braking}, {@code choosing}, {@code conductors}, {@code bill},
 * {@code http}, {@code layout}, {@code causes} or {@code all} of these; fails if a ratio is missed.
 */
final class Benchmarks {

    private Benchmarks() {}

    public static void main(String[] args) throws Exception {
        boolean holds = switch (args[0]) {
            case "study" -> study();
            case "scaling" -> ScalingCheck.holds();
            case "braking" -> BrakingRatio.holds();
            case "choosing" -> ChoosingRatio.holds();
            case "layout" -> LayoutRatio.holds();
            case "conductors" -> ConductorScaling.holds();
            case "bill" -> BillScaling.holds();
            case "http" -> HttpRatio.holds();
            case "causes" -> CausesRatio.holds();
            case "all" -> all();
            default -> throw new IllegalArgumentException(args[0]);
        };
        System.exit(holds ? 0 : 1);
    }

    /** Every one is run, whatever the others say. */
    private static boolean all() throws RunnerException, IOException, InterruptedException, ExecutionException {
        return study()
                & BrakingRatio.holds()
                & ChoosingRatio.holds()
                & LayoutRatio.holds()
                & ConductorScaling.holds()
                & BillScaling.holds()
                & HttpRatio.holds()
                & CausesRatio.holds()
                & ScalingCheck.holds();
    }

    /** Times only, nothing to be held. */
    private static boolean study() throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(SystemStudyBenchmark.class.getName())
                        .shouldFailOnError(true)
                        .build())
                .run();
        return true;
    }
}
