package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.DeviceRatings;
import io.axiswright.engine.standard.IecCorrection;
import io.axiswright.engine.standard.Sourced;
import java.util.Optional;

/**
 * The correction factors of a circuit under IEC: those of IEC 60204-1 for PVC, those of IEC 60364-5-52 for the rest.
 *
 * @param ambient for the ambient temperature
 * @param together for circuits together
 */
record IecConditions(Sourced<Ratio> ambient, Sourced<Ratio> together) {

    static Optional<Sourced<Ratio>> ambient(Circuit circuit) {
        return machine(circuit)
                ? IecCorrection.machineAmbient(circuit.ambient())
                : IecCorrection.ambient(circuit.insulation(), circuit.ambient());
    }

    static Optional<Sourced<Ratio>> together(Circuit circuit, int parallel) {
        return machine(circuit)
                ? IecCorrection.machineGrouping(circuit.method(), circuit.together(parallel))
                : IecCorrection.grouping(circuit.method(), circuit.together(parallel));
    }

    static Gap ambientGap(Circuit circuit) {
        return machine(circuit)
                ? new Gap(
                        "ambient",
                        circuit.ambient(),
                        IecCorrection.highestMachineAmbient(),
                        Limit.AMPACITY,
                        "IEC 60204-1:2016 Table D.1")
                : new Gap(
                        "ambient",
                        circuit.ambient(),
                        IecCorrection.highestAmbient(circuit.insulation()).orElse(null),
                        Limit.AMPACITY,
                        "IEC 60364-5-52:2009 Table B.52.14");
    }

    static Gap togetherGap(Circuit circuit) {
        return new Gap(
                "groupedCircuits",
                new Ratio(circuit.groupedCircuits()),
                new Ratio(IecCorrection.mostCircuits(circuit.method())),
                Limit.AMPACITY,
                "IEC 60364-5-52:2009 Table B.52.17");
    }

    static Gap deviceGap(Circuit circuit) {
        Current given = circuit.deviceRating();
        return new Gap(
                given == null ? "designCurrent" : "deviceRating",
                given == null ? circuit.designCurrent() : given,
                DeviceRatings.of(CodeBasis.IEC_60204_1, circuit.device())
                        .getLast()
                        .value(),
                Limit.DEVICE_COORDINATION,
                "IEC 60364-4-43 433.1");
    }

    /** Whether the tables of IEC 60204-1 hold. */
    static boolean machine(Circuit circuit) {
        return circuit.insulation() == Insulation.PVC_70;
    }
}
