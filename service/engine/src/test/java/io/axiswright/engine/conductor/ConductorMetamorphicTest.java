package io.axiswright.engine.conductor;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What must hold between two answers, whatever they are. */
class ConductorMetamorphicTest {

    private static final int COUNT = 1_000;

    /**
     * How thick the answer is: conductors in parallel count before their area in m², which is far below 1; beyond every size
     * where none serves.
     */
    private static double area(CodeBasis basis, CircuitBuilder circuit) {
        CircuitConductors answer = Sizing.one(basis, circuit.build());
        ConductorSize size = answer.conductor();
        return size == null
                ? Double.POSITIVE_INFINITY
                : answer.conductorsPerLine() + size.area().si();
    }

    private static void neverThinner(CodeBasis basis, Consumer<CircuitBuilder> harder) {
        int thicker = 0;
        for (long seed = 0; seed < COUNT; seed++) {
            CircuitBuilder circuit = Circuits.random(basis, seed);
            double before = area(basis, circuit);
            harder.accept(circuit);
            double after = area(basis, circuit);
            assertThat(after).as("seed %d %s", seed, circuit.build()).isGreaterThanOrEqualTo(before);
            thicker += after > before ? 1 : 0;
        }
        assertThat(thicker).isGreaterThan(COUNT / 50);
    }

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void longerIsNeverThinner(CodeBasis basis) {
        neverThinner(basis, c -> c.metres *= 1.7);
    }

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void hotterIsNeverThinner(CodeBasis basis) {
        neverThinner(basis, c -> c.ambient += 7);
    }

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void aluminiumIsNeverThinnerThanCopper(CodeBasis basis) {
        neverThinner(basis, c -> c.material = ConductorMaterial.ALUMINIUM);
    }

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void moreTogetherIsNeverThinner(CodeBasis basis) {
        neverThinner(basis, c -> c.grouped += 3);
    }

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void moreCurrentIsNeverThinner(CodeBasis basis) {
        neverThinner(basis, c -> c.amperes *= 1.3);
    }

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void moreFaultCurrentIsNeverThinner(CodeBasis basis) {
        neverThinner(
                basis, c -> c.fault(c.fault == null ? 8000 : c.fault * 1.5, c.clearing == null ? 0.1 : c.clearing));
    }

    /** More leakage current never makes the protective conductor thinner. */
    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void moreLeakageIsNeverThinner(CodeBasis basis) {
        int thicker = 0;
        for (long seed = 0; seed < COUNT; seed++) {
            CircuitBuilder circuit = Circuits.random(basis, seed);
            // the thinnest aluminium under IEC, and the thinnest cores in free air, are thick enough for any leakage
            circuit.material = ConductorMaterial.COPPER;
            circuit.method = circuit.method == InstallationMethod.F ? InstallationMethod.E : circuit.method;
            ConductorSize before = Sizing.one(basis, circuit.build()).protectiveConductor();
            circuit.leakage((circuit.leakage == null ? 0 : circuit.leakage) + 0.006);
            ConductorSize after = Sizing.one(basis, circuit.build()).protectiveConductor();
            if (before != null && after != null) {
                assertThat(after).as("seed %d", seed).isGreaterThanOrEqualTo(before);
                thicker += after.compareTo(before) > 0 ? 1 : 0;
            }
        }
        assertThat(thicker).isGreaterThan(COUNT / 50);
    }

    /** What is allowed beyond a single conductor changes nothing where a single one serves, and never loses an answer. */
    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void allowingParallelConductorsOnlyHelps(CodeBasis basis) {
        int helped = 0;
        for (long seed = 0; seed < COUNT; seed++) {
            CircuitBuilder circuit = Circuits.random(basis, seed);
            circuit.parallel = null;
            CircuitConductors single = Sizing.one(basis, circuit.build());
            CircuitConductors allowed = Sizing.one(basis, circuit.parallel(4).build());
            if (single.conductor() != null) {
                assertThat(allowed).as("seed %d", seed).isEqualTo(single);
            } else if (allowed.conductor() != null) {
                assertThat(allowed.conductorsPerLine()).as("seed %d", seed).isGreaterThan(1);
                helped++;
            }
        }
        assertThat(helped).isGreaterThan(COUNT / 50);
    }

    /** 310.15(E)(3) and 220.61: a higher third harmonic never asks for less. Annex E of IEC 60364-5-52 drops at 45 %. */
    @Test
    void moreThirdHarmonicIsNeverThinnerInNorthAmerica() {
        neverThinner(CodeBasis.NFPA_79, c -> {
            if (c.kind == CircuitKind.AC_THREE_PHASE) {
                c.thirdHarmonic((c.thirdHarmonic == null ? 0 : c.thirdHarmonic) + 0.15);
            }
        });
    }

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void longerFaultIsNeverThinner(CodeBasis basis) {
        neverThinner(basis, c -> c.fault(c.fault == null ? 5000 : c.fault, c.clearing == null ? 0.2 : c.clearing * 2));
    }

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void moreCurrentIsNeverALowerRating(CodeBasis basis) {
        for (long seed = 0; seed < COUNT; seed++) {
            CircuitBuilder circuit = Circuits.random(basis, seed);
            Current before = Sizing.one(basis, circuit.build()).deviceRating();
            Current after = Sizing.one(
                            basis, circuit.amperes(circuit.amperes * 1.2).build())
                    .deviceRating();
            if (before != null && after != null) {
                assertThat(after.si()).as("seed %d", seed).isGreaterThanOrEqualTo(before.si());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void continuousIsNeverThinner(CodeBasis basis) {
        for (long seed = 0; seed < COUNT; seed++) {
            CircuitBuilder circuit = Circuits.random(basis, seed);
            circuit.loadKind = LoadKind.GENERAL;
            circuit.pulse = null;
            circuit.largest = null;
            double before = area(basis, circuit);
            circuit.loadKind = LoadKind.GENERAL_CONTINUOUS;
            assertThat(area(basis, circuit)).as("seed %d", seed).isGreaterThanOrEqualTo(before);
        }
    }

    /** A circuit's answer does not depend on its neighbours in the request, nor on their order. */
    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void orderDoesNotMatter(CodeBasis basis) {
        var circuits = new ArrayList<Circuit>();
        for (long seed = 0; seed < 50; seed++) {
            circuits.add(Circuits.random(basis, seed).build());
        }
        List<CircuitConductors> forward = new ConductorSizing()
                .size(new ConductorRequest(basis, circuits))
                .circuits();
        List<CircuitConductors> backward = new ConductorSizing()
                .size(new ConductorRequest(basis, circuits.reversed()))
                .circuits();
        assertThat(backward.reversed()).isEqualTo(forward);
        assertThat(forward.get(3)).isEqualTo(Sizing.one(basis, circuits.get(3)));
    }
}
