package io.axiswright.engine.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a look-up falls between two rows of a table the next worse one answers, by values read off the tables beside them. */
class BetweenRowsTest {

    private static void isAbout(OptionalDouble found, double value) {
        assertThat(found).isPresent();
        assertThat(found.getAsDouble()).isCloseTo(value, within(1e-9));
    }

    /** Table D.2 has 2, 4, 6 and 9 circuits, Table B.52.17 above it 12, 16 and 20. */
    @ParameterizedTest
    @CsvSource({
        "B1, 3, 0.65",
        "B2, 5, 0.57",
        "C, 3, 0.75",
        "C, 7, 0.70",
        "E, 5, 0.73",
        "E, 8, 0.72",
        "B1, 10, 0.45",
        "B1, 13, 0.41",
        "B2, 17, 0.38",
        "F, 3, 0.82",
        "F, 10, 0.72"
    })
    void circuitsTogether(InstallationMethod method, int circuits, double factor) {
        isAbout(
                IecCorrection.machineGrouping(method, circuits).stream()
                        .mapToDouble(f -> f.value().si())
                        .findFirst(),
                factor);
        assertThat(IecCorrection.machineGrouping(method, 21)).isEmpty();
    }

    /** Fuses to 4 A 2.1, below 16 A 1.9, from there 1.6; breakers 1.45 to 125 A, 1.30 above. */
    @ParameterizedTest
    @CsvSource({
        "FUSE, 4.01, 1.9",
        "FUSE, 15, 1.9",
        "FUSE, 16, 1.6",
        "FUSE, 70, 1.6",
        "BREAKER, 64, 1.45",
        "BREAKER, 126, 1.3"
    })
    void trippingCurrents(DeviceKind kind, double rating, double multiple) {
        isAbout(
                ConventionalCurrents.multiple(kind, new Current(rating)).stream()
                        .mapToDouble(m -> m.value().si())
                        .findFirst(),
                multiple);
        assertThat(ConventionalCurrents.multiple(kind, new Current(6301))).isEmpty();
    }

    /** A duty between two rows of Table 430.29 is on no longer, and off no shorter, than the row that serves it. */
    @ParameterizedTest
    @CsvSource({"5, 75, 0.35", "5.1, 75, 0.45", "5, 74, 0.45", "12, 44, 0.75", "15, 14, 1.1", "16, 500, 1.1"})
    void resistors(double on, double off, double multiple) {
        assertThat(ResistorDuty.multiple(new Time(on), new Time(off)).value().si())
                .isEqualTo(multiple);
    }

    /** Ratios from 20, 50, 100 and 1000 up; just below, the row before. */
    @ParameterizedTest
    @CsvSource({"19.99, 0.05", "20, 0.08", "49.99, 0.08", "99.9, 0.12", "999, 0.15", "5000, 0.20"})
    void distortion(double ratio, double total) {
        assertThat(CurrentDistortionLimits.at(ratio).total().value().si()).isCloseTo(total, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"IEC_60204_1, 12, 4", "IEC_60204_1, 12.01, 5", "NFPA_79, 20.1, 8"})
    void bends(CodeBasis basis, double millimetres, double multiple) {
        assertThat(BendRadii.multiple(basis, BendRadii.Use.MOVING, new Length(millimetres / 1000))
                        .value()
                        .si())
                .isEqualTo(multiple);
    }

    /** Table 41.1: above 230 V to 400 V 0.2 s, above 400 V 0.1 s. */
    @ParameterizedTest
    @CsvSource({"100, 0.8", "127, 0.4", "277, 0.2", "430, 0.1"})
    void disconnection(double volts, double seconds) {
        isAbout(
                DisconnectionTimes.ofFinalCircuit(SystemEarthing.TN, new Voltage(volts), new Current(16)).stream()
                        .mapToDouble(t -> t.value().si())
                        .findFirst(),
                seconds);
    }

    /** k of PVC is 115 to 300 mm², 103 above. */
    @Test
    void adiabaticFactors() {
        assertThat(AdiabaticFactor.of(ConductorMaterial.COPPER, Insulation.PVC_70, new Area(300e-6))
                        .value())
                .isEqualTo(115);
        assertThat(AdiabaticFactor.of(ConductorMaterial.COPPER, Insulation.PVC_70, new Area(301e-6))
                        .value())
                .isEqualTo(103);
    }

    /** Below 9 A 167 % rounded down: 8.99 A are 15.01 A; from 9 A 125 % rounded up: 11.25 A are 15 A, 12.1 A are 20 A. */
    @ParameterizedTest
    @CsvSource({"8.9, 10", "8.99, 15", "9, 15", "12.1, 20"})
    void transformers(double secondary, double device) {
        var protection = new TransformerProtection(CodeBasis.NFPA_79, DeviceKind.BREAKER);
        isAbout(
                protection.secondary(new Current(secondary)).stream()
                        .mapToDouble(Current::si)
                        .findFirst(),
                device);
    }

    /** 7 % of tolerance are those of 10 %; above 10 % there is no row. */
    @Test
    void voltageFactors() {
        isAbout(
                VoltageFactors.highest(0.07).stream()
                        .mapToDouble(Sourced::value)
                        .findFirst(),
                1.10);
        assertThat(VoltageFactors.highest(0.11)).isEmpty();
    }
}
