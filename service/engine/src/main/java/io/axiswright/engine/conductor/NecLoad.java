package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.DeviceRatings;
import io.axiswright.engine.standard.MotorDevices;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a load asks of conductor and device under the NEC.
 *
 * <p>210.19 sets 125 % of a continuous load against the ampacity <em>before</em> correction, and the load itself against the
 * ampacity after it. 430.22 and 430.122 have no such words: 125 % of a motor or drive is held against both.
 *
 * @param circuit the circuit
 * @param actual the load current
 * @param terminalDemand what the terminal column must carry
 * @param correctedDemand what the corrected ampacity must carry
 * @param wanted what the device is chosen from
 * @param most the highest device the load allows, if it limits it
 */
record NecLoad(
        Circuit circuit,
        Current actual,
        Current terminalDemand,
        Current correctedDemand,
        Current wanted,
        @Nullable Current most) {

    /** 210.19(A)(1), 210.20(A), 430.22, 430.122. */
    private static final double ADDITION = 1.25;

    static NecLoad of(Circuit circuit) {
        Current actual = circuit.designCurrent();
        Current raised = new Current(ADDITION * actual.si());
        return switch (circuit.loadKind()) {
            case GENERAL -> new NecLoad(circuit, actual, actual, actual, actual, null);
            case GENERAL_CONTINUOUS -> new NecLoad(circuit, actual, raised, actual, raised, null);
            case MOTOR_OR_DRIVE -> motor(circuit, actual, raised);
        };
    }

    private static NecLoad motor(Circuit circuit, Current actual, Current raised) {
        double multiple = MotorDevices.multiple(circuit.device()).value().si();
        Current wanted = new Current(multiple * actual.si());
        // Exception 1 of 430.52(C)(1): the next standard rating up.
        Current most = DeviceRatings.nextUp(CodeBasis.NFPA_79, circuit.device(), wanted)
                .map(Sourced::value)
                .orElse(wanted);
        return new NecLoad(circuit, actual, raised, raised, wanted, most);
    }

    boolean motor() {
        return circuit.loadKind() == LoadKind.MOTOR_OR_DRIVE;
    }

    boolean continuous() {
        return circuit.loadKind() == LoadKind.GENERAL_CONTINUOUS;
    }

    /** The rule that sets the conductor's ampacity. */
    String clause() {
        return motor() ? "NFPA 70:2023 430.22, 430.122" : "NFPA 70:2023 210.19(A)";
    }

    Optional<Device> device() {
        Current least = motor() ? actual : terminalDemand;
        return Device.of(circuit, CodeBasis.NFPA_79, least, wanted, most);
    }

    /** The table behind the highest device of a motor. */
    Optional<Source> deviceRule() {
        return motor() ? Optional.of(MotorDevices.multiple(circuit.device()).source()) : Optional.empty();
    }
}
