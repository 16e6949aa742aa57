package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.MotorDevices;
import io.axiswright.engine.standard.ResistorDuty;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a load asks of conductor and device under the NEC.
 *
 * <p>210.19 sets 125 % of a continuous load against the ampacity <em>before</em> correction, and the load itself against the
 * ampacity after it. 430.22, 430.24, 430.29 and 430.122 have no such words: what they ask for is held against both.
 *
 * @param circuit the circuit
 * @param actual the load current
 * @param terminalDemand what the terminal column must carry
 * @param correctedDemand what the corrected ampacity must carry
 * @param range what the device may be
 * @param clause the rule that sets the conductor's ampacity
 * @param table the table behind the demand or the device, if there is one
 */
record NecLoad(
        Circuit circuit,
        Current actual,
        Current terminalDemand,
        Current correctedDemand,
        DeviceRange range,
        String clause,
        @Nullable Source table) {

    /** 210.19(A)(1), 210.20(A), 430.22, 430.24, 430.122. */
    private static final double ADDITION = 1.25;

    private static final String GENERAL = "NFPA 70:2023 210.19(A)";

    static NecLoad of(Circuit circuit) {
        Current actual = circuit.designCurrent();
        return switch (circuit.loadKind()) {
            case GENERAL -> of(circuit, actual, actual, DeviceRange.above(actual), GENERAL, null);
            case GENERAL_CONTINUOUS -> {
                Current raised = times(ADDITION, actual);
                yield of(circuit, raised, actual, DeviceRange.above(raised), GENERAL, null);
            }
            case MOTOR_OR_DRIVE -> motors(circuit, actual);
            case BRAKING_RESISTOR -> {
                Sourced<Ratio> multiple = multiple(circuit.resistorPulse());
                Current demand = times(multiple.value().si(), actual);
                yield of(circuit, demand, demand, DeviceRange.above(demand), multiple.clause(), multiple.source());
            }
        };
    }

    /** 125 % of the largest and the others once; a single one is the largest. */
    private static NecLoad motors(Circuit circuit, Current actual) {
        Current raised = raised(circuit);
        return of(
                circuit,
                raised,
                raised,
                DeviceRange.ofMotors(circuit.device(), actual, largest(circuit), raised),
                circuit.largestLoad() == null ? "NFPA 70:2023 430.22, 430.122(A)" : "NFPA 70:2023 430.24",
                MotorDevices.multiple(circuit.device()).source());
    }

    private static Sourced<Ratio> multiple(@Nullable ResistorPulse pulse) {
        return pulse == null ? ResistorDuty.continuous() : ResistorDuty.multiple(pulse.on(), pulse.off());
    }

    private static NecLoad of(
            Circuit circuit,
            Current terminals,
            Current corrected,
            DeviceRange range,
            String clause,
            @Nullable Source table) {
        double neutral = NeutralLoading.necMultiple(circuit);
        return new NecLoad(
                circuit,
                circuit.designCurrent(),
                times(neutral, terminals),
                times(neutral, corrected),
                range,
                clause,
                table);
    }

    private static Current times(double factor, Current current) {
        return new Current(factor * current.si());
    }

    /** What conductors of motors must carry, the neutral aside. */
    static Current raised(Circuit circuit) {
        return new Current(circuit.designCurrent().si() + (ADDITION - 1) * largest(circuit));
    }

    private static double largest(Circuit circuit) {
        Current stated = circuit.largestLoad();
        return (stated == null ? circuit.designCurrent() : stated).si();
    }

    boolean motor() {
        return circuit.loadKind() == LoadKind.MOTOR_OR_DRIVE;
    }

    boolean continuous() {
        return circuit.loadKind() == LoadKind.GENERAL_CONTINUOUS;
    }

    Optional<Device> device() {
        return Device.of(circuit, CodeBasis.NFPA_79, range);
    }

    /** The table behind the demand or the device. */
    Optional<Source> rule() {
        return Optional.ofNullable(table);
    }
}
