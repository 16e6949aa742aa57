package io.axiswright.load;

import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The whole system without the exact layout solver, for machines of growing size; {@link ScalingCheck} judges it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class ScalingBenchmark {

    /** Axes of the machine. */
    @Param({"16", "32", "64", "128", "256"})
    public int axes;

    private final SystemStudy study = SystemStudy.with(LayoutEffort.HEURISTIC);
    private StudyRequest request = DemoStudies.demo();

    /** Makes the machine; a machine without a layout would be measured for less than the work it stands for. */
    @Setup
    public void makeMachine() {
        request = DemoStudies.row(axes);
        StudyResult result = study.system(request);
        if (result.topology().gateways().isEmpty()) {
            throw new IllegalStateException(
                    "no layout for " + axes + " axes: " + result.topology().findings());
        }
    }

    /** Everything. */
    @Benchmark
    public StudyResult system() {
        return study.system(request);
    }
}
