package io.axiswright.engine.conductor;

import static io.axiswright.engine.conductor.CircuitBuilder.iec;
import static io.axiswright.engine.conductor.CircuitBuilder.nec;
import static io.axiswright.engine.conductor.Sizing.conductor;
import static io.axiswright.engine.conductor.Sizing.protective;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import org.junit.jupiter.api.Test;

/** Several conductors on each line, by hand from the tables. */
class ParallelConductorsTest {

    /** No single size carries 600 A, and none is put in parallel unasked. */
    @Test
    void onlyWhereAllowed() {
        assertThat(Sizing.nec(nec(LoadKind.GENERAL, 600)).conductor()).isNull();
        assertThat(Sizing.nec(nec(LoadKind.GENERAL, 600).parallel(1)).conductor())
                .isNull();
    }

    /**
     * Two sets are six conductors: 0.80. Table 310.16 at 90 °C: 350 kcmil 2 · 350 · 0.80 = 560 A, 400 kcmil 2 · 380 · 0.80 =
     * 608 A; terminals 2 · 335 A. Beside each set the conductor of the 600 A device, 1 AWG (250.122(F)).
     */
    @Test
    void twoSets() {
        var answer = Sizing.nec(nec(LoadKind.GENERAL, 600).parallel(4));
        assertThat(answer.conductorsPerLine()).isEqualTo(2);
        assertThat(conductor(answer)).isEqualTo("400 kcmil");
        assertThat(Sizing.ampacity(answer)).isCloseTo(608, within(1e-9));
        assertThat(protective(answer)).isEqualTo("1 AWG");
    }

    /** 310.10(G): 1/0 AWG and larger. In a light load's long run 1/0 AWG in parallel is the first that counts. */
    @Test
    void noneThinnerThanOneNought() {
        var run = nec(LoadKind.GENERAL, 60)
                .run(24, 200, 0.05)
                .kind(CircuitKind.DC)
                .parallel(8);
        var answer = Sizing.nec(run);
        assertThat(answer.conductorsPerLine()).isGreaterThan(1);
        assertThat(answer.tried())
                .filteredOn(t -> t.conductorsPerLine() == 2 && t.size().label().equals("1 AWG"))
                .singleElement()
                .satisfies(t -> assertThat(t.failed()).isEqualTo(Limit.CODE_MINIMUM));
    }

    /**
     * IEC 60364-5-52 523.7: a single 300 mm² on a tray carries 621 A (XLPE, three loaded). Two circuits together on a tray carry
     * 0.88 of the sum of both (Table B.52.17 line 4): 185 mm² 2 · 456 · 0.88 = 802.6 A, 150 mm² 702 A, for an 800 A breaker.
     * Beside each the protective conductor of 185 mm²: 92.5, so 95 mm².
     */
    @Test
    void twoCablesOnATray() {
        var answer = Sizing.iec(iec(700).method(InstallationMethod.E)
                .insulation(Insulation.XLPE_90)
                .termination(90)
                .device(DeviceKind.BREAKER, 800.0)
                .parallel(2));
        assertThat(answer.conductorsPerLine()).isEqualTo(2);
        assertThat(conductor(answer)).isEqualTo("185 mm2");
        assertThat(Sizing.ampacity(answer)).isCloseTo(802.56, within(1e-9));
        assertThat(protective(answer)).isEqualTo("95 mm2");
    }

    /** Half the resistance, half the drop. */
    @Test
    void theDropIsShared() {
        var one = Sizing.run(
                CodeBasis.NFPA_79, nec(LoadKind.GENERAL, 300).run(480, 100, 0.2).build());
        assertThat(one.circuits().getFirst().conductorsPerLine()).isEqualTo(1);
        var many = Sizing.nec(nec(LoadKind.GENERAL, 600).run(480, 100, 0.2).parallel(2));
        var size = new VoltageDropOf(conductor(many));
        assertThat(Sizing.drop(many)).isCloseTo(size.threePhase(300, 100), within(1e-6));
    }

    /** Table 9, steel, unity power factor: ΔU = √3·I·R·L with the current of one conductor. */
    private record VoltageDropOf(String size) {

        double threePhase(double amperes, double metres) {
            // 400 kcmil in steel: 0.035 ohm/kft (NFPA 70 Chapter 9 Table 9)
            assertThat(size).isEqualTo("400 kcmil");
            return Math.sqrt(3) * amperes * 0.035 / 304.8 * metres;
        }
    }
}
