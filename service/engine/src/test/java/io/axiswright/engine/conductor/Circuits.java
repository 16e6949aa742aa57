package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.standard.ConductorClass;
import io.axiswright.engine.standard.Raceway;
import java.util.List;
import java.util.SplittableRandom;

/** Circuits of all sorts, from a seed. */
final class Circuits {

    private static final List<Double> VOLTAGES = List.of(24.0, 48.0, 120.0, 230.0, 400.0, 480.0, 600.0);

    private Circuits() {}

    static CircuitBuilder random(CodeBasis basis, long seed) {
        var random = new SplittableRandom(seed);
        var circuit = new CircuitBuilder();
        circuit.id = "c" + seed;
        circuit.kind = pick(random, CircuitKind.values());
        circuit.loadKind = pick(random, LoadKind.values());
        if (random.nextInt(4) == 0) {
            circuit.control();
        }
        circuit.amperes = Math.round(Math.exp(random.nextDouble(Math.log(0.5), Math.log(250))) * 10) / 10.0;
        circuit.volts = VOLTAGES.get(random.nextInt(VOLTAGES.size()));
        circuit.metres = Math.exp(random.nextDouble(0, Math.log(200)));
        circuit.powerFactor = circuit.kind == CircuitKind.DC ? 1 : random.nextDouble(0.3, 1);
        circuit.method = pick(random, InstallationMethod.values());
        circuit.insulation = basis == CodeBasis.NFPA_79
                ? pick(random, Insulation.NEC_60, Insulation.NEC_75, Insulation.NEC_90, Insulation.PVC_70)
                : pick(random, Insulation.PVC_70, Insulation.XLPE_90, Insulation.NEC_90);
        circuit.ambient = random.nextInt(-10, 66);
        circuit.grouped = random.nextInt(1, random.nextInt(4) == 0 ? 26 : 5);
        circuit.termination = pick(random, 60.0, 70.0, 75.0, 90.0);
        circuit.dropLimit = random.nextDouble(0.01, 0.1);
        circuit.device = pick(random, DeviceKind.values());
        if (random.nextInt(4) == 0) {
            circuit.rating = pick(random, 6.0, 10.0, 16.0, 20.0, 25.0, 40.0, 63.0, 70.0, 100.0, 250.0, 1250.0);
        }
        if (random.nextInt(3) == 0) {
            circuit.fault(Math.exp(random.nextDouble(Math.log(100), Math.log(20_000))), random.nextDouble(0.01, 0.5));
        }
        circuit.raceway = random.nextInt(3) == 0 ? null : pick(random, Raceway.values());
        circuit.construction = random.nextInt(3) == 0 ? null : pick(random, ConductorClass.values());
        unusual(circuit, basis, random);
        return circuit;
    }

    /** What most circuits do not state. */
    private static void unusual(CircuitBuilder circuit, CodeBasis basis, SplittableRandom random) {
        if (circuit.loadKind == LoadKind.MOTOR_OR_DRIVE && random.nextBoolean()) {
            circuit.largest(circuit.amperes * random.nextDouble(0.1, 1));
        }
        if (circuit.loadKind == LoadKind.BRAKING_RESISTOR && random.nextInt(3) > 0) {
            circuit.pulse(random.nextDouble(1, 20), random.nextDouble(5, 100));
        }
        if (circuit.kind == CircuitKind.AC_THREE_PHASE && random.nextInt(3) == 0) {
            circuit.thirdHarmonic(random.nextDouble(0, 0.8));
        }
        if (random.nextInt(3) == 0) {
            circuit.leakage(random.nextDouble(0, 0.03));
        }
        if (random.nextInt(3) == 0) {
            circuit.parallel(random.nextInt(1, 5));
        }
        if (random.nextInt(8) == 0) {
            boolean metric = basis == CodeBasis.IEC_60204_1;
            circuit.terminals(
                    metric ? pick(random, "2.5 mm2", "6 mm2") : pick(random, "12 AWG", "8 AWG"),
                    metric ? pick(random, "16 mm2", "50 mm2") : pick(random, "4 AWG", "2/0 AWG"));
        }
        if (random.nextInt(12) == 0) {
            circuit.amperes(circuit.amperes * 6);
            circuit.largest = circuit.largest == null ? null : circuit.largest * 6;
        }
        if (random.nextInt(4) == 0) {
            circuit.material = ConductorMaterial.ALUMINIUM;
        }
    }

    @SafeVarargs
    private static <T> T pick(SplittableRandom random, T... values) {
        return values[random.nextInt(values.length)];
    }
}
