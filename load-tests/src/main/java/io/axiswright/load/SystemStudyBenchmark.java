package io.axiswright.load;

import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.braking.BrakingResult;
import io.axiswright.engine.conductor.ConductorResult;
import io.axiswright.engine.controlpower.ControlPowerResult;
import io.axiswright.engine.duty.DutyResult;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.TopologyResult;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The demo design without the exact layout solver, on one thread: the whole system, and each discipline asked for by
 * itself. A discipline's time includes the disciplines it follows from: all include {@code duty} except {@code topology};
 * {@code controlPower} adds {@code topology}; {@code supply}, {@code conductors} and {@code billOfMaterials} build on it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 10, time = 2)
@Measurement(iterations = 10, time = 1)
public class SystemStudyBenchmark {

    private final SystemStudy study = SystemStudy.with(LayoutEffort.HEURISTIC);
    private final StudyRequest request = DemoStudies.demo();

    /** Everything. */
    @Benchmark
    public StudyResult system() {
        return study.system(request);
    }

    /** Duty of each axis, and its drive unit. */
    @Benchmark
    public DutyResult duty() {
        return study.duty(request);
    }

    /** Layout of the control network, by the plain-Java search. */
    @Benchmark
    public TopologyResult topology() {
        return study.topology(request);
    }

    /** Control supply. */
    @Benchmark
    public ControlPowerResult controlPower() {
        return study.controlPower(request);
    }

    /** Where returned energy goes. */
    @Benchmark
    public BrakingResult braking() {
        return study.braking(request);
    }

    /** Branch circuits and feeder. */
    @Benchmark
    public SupplyResult supply() {
        return study.supply(request);
    }

    /** Conductors of these circuits. */
    @Benchmark
    public ConductorResult conductors() {
        return study.conductors(request);
    }

    /** Everything to be bought. */
    @Benchmark
    public BillResult billOfMaterials() {
        return study.billOfMaterials(request);
    }
}
