package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Cycle;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.duty.Course;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The feeder of a machine whose axes run by one clock. */
class CyclesInStepTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);
    private static final int AXES = 16;
    private static final int SAMPLES = 5_600;

    private static final Map<String, DriveUnit> UNITS =
            TestCell.catalogue().driveUnits().stream().collect(Collectors.toMap(DriveUnit::id, Function.identity()));

    private final Map<AxisDuty, Double> effective = new IdentityHashMap<>();

    /** Axes alike; every second one begins with the dwell where the others move. */
    private static StudyResult study(boolean inTurn, @Nullable Boolean inStep) {
        StudyRequest cell = TestCell.request(AXES);
        List<Axis> axes = new ArrayList<>(cell.design().axes());
        for (int k = 1; inTurn && k < AXES; k += 2) {
            List<Segment> segments = new ArrayList<>(axes.get(k).cycle().segments());
            Collections.rotate(segments, 1);
            axes.set(k, Copies.with(axes.get(k), "cycle", new Cycle(segments)));
        }
        var installation = Copies.with(Objects.requireNonNull(cell.design().installation()), "cyclesInStep", inStep);
        return STUDY.system(new StudyRequest(
                cell.codeBasis(),
                cell.catalogue(),
                Copies.with(Copies.with(cell.design(), "axes", axes), "installation", installation)));
    }

    private static double feeder(StudyResult study) {
        return study.supply().feeder().designCurrent().si();
    }

    private static double controlSupplies(StudyResult study) {
        return study.supply().balance().lines().stream()
                        .mapToDouble(line -> line.thermalCurrent().si())
                        .max()
                        .orElseThrow()
                - study.duty().axes().stream()
                        .mapToDouble(CyclesInStepTest::rms)
                        .sum();
    }

    private static double rms(AxisDuty axis) {
        return Objects.requireNonNull(axis.unit()).cycleInputCurrent().si();
    }

    @Test
    void axesThatAllDrawAtOnceAreTheirSum() {
        double sum = feeder(study(false, null));
        assertThat(sum).isGreaterThan(5);
        assertThat(feeder(study(false, true))).isCloseTo(sum, within(1e-9));
        assertThat(feeder(study(true, false))).isCloseTo(feeder(study(true, null)), within(1e-12));
    }

    /** Sampled: the input of every axis, T·w + (T/Km)² + standby loss while positive, in proportion to its effective value. */
    @Test
    void axesInTurnShareTheFeeder() {
        StudyResult study = study(true, true);
        double squares = 0;
        for (int k = 0; k < SAMPLES; k++) {
            double share = (k + 0.5) / SAMPLES;
            double all = study.duty().axes().stream()
                    .mapToDouble(axis -> rms(axis) * input(axis, share) / effective(axis))
                    .sum();
            squares += all * all;
        }
        double sampled = Math.sqrt(squares / SAMPLES) + controlSupplies(study);
        assertThat(feeder(study)).isCloseTo(sampled, within(1e-3 * sampled));
        assertThat(feeder(study)).isLessThan(0.95 * feeder(study(true, null)));
    }

    private double effective(AxisDuty axis) {
        return effective.computeIfAbsent(axis, a -> {
            double squares = 0;
            for (int k = 0; k < SAMPLES; k++) {
                double input = input(a, (k + 0.5) / SAMPLES);
                squares += input * input;
            }
            return Math.sqrt(squares / SAMPLES);
        });
    }

    private static double input(AxisDuty axis, double share) {
        DriveUnit unit = Objects.requireNonNull(UNITS.get(axis.driveUnit()));
        double time = share * axis.course().duration();
        Course.Piece piece = axis.course().pieces().stream()
                .filter(p -> time < p.end())
                .findFirst()
                .orElseThrow();
        double torque = piece.torque().at(time - piece.start());
        double copper = torque / unit.motorConstant().si();
        return Math.max(
                0,
                torque * piece.speed().at(time - piece.start())
                        + copper * copper
                        + unit.standbyLoss().si());
    }
}
