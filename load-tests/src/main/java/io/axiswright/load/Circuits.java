package io.axiswright.load;

import io.axiswright.engine.conductor.Circuit;
import io.axiswright.engine.conductor.CircuitKind;
import io.axiswright.engine.conductor.ConductorRequest;
import io.axiswright.engine.conductor.LoadKind;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.CircuitUse;
import java.util.stream.IntStream;

/** A panel's worth of circuits: drives on three phases, other loads on one. */
final class Circuits {

    private static final int COUNT = 12;

    private Circuits() {}

    static ConductorRequest request() {
        return request(CodeBasis.IEC_60204_1, COUNT);
    }

    /** So many circuits: those of one panel over and over. */
    static ConductorRequest request(CodeBasis basis, int circuits) {
        return new ConductorRequest(
                basis, IntStream.range(0, circuits).mapToObj(Circuits::circuit).toList());
    }

    private static Circuit circuit(int number) {
        int k = number % COUNT;
        boolean drive = k % 2 == 0;
        return new Circuit(
                "circuit-" + (number + 1),
                drive ? CircuitKind.AC_THREE_PHASE : CircuitKind.AC_ONE_PHASE,
                CircuitUse.POWER,
                drive ? LoadKind.MOTOR_OR_DRIVE : LoadKind.GENERAL_CONTINUOUS,
                new Current(3 + 1.7 * k),
                new Voltage(drive ? 400 : 230),
                new Length(6 + 2.5 * k),
                0.9,
                InstallationMethod.B2,
                Insulation.PVC_70,
                ConductorMaterial.COPPER,
                new Temperature(313.15),
                4,
                new Temperature(348.15),
                0.04,
                DeviceKind.BREAKER,
                null,
                new Current(6000),
                new Time(0.01),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }
}
