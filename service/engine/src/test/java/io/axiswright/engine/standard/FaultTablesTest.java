package io.axiswright.engine.standard;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FaultTablesTest {

    /** IEC 60364-4-41 Table 41.1 as printed at http://www.ericmark.talktalk.net/41-1.html; voltages of 120, 208, 400, 480, 690 V. */
    @ParameterizedTest
    @CsvSource({
        "TN, 120, 0.8",
        "TN, 120.09, 0.8",
        "TN, 230.94, 0.4",
        "TN, 277.13, 0.2",
        "TN, 398.37, 0.2",
        "TN, 480, 0.1",
        "TT, 120, 0.3",
        "TT, 230.94, 0.2",
        "TT, 277.13, 0.07",
        "TT, 480, 0.04"
    })
    void finalCircuitsUpTo32Amperes(SystemEarthing earthing, double volts, double seconds) {
        var time = DisconnectionTimes.ofFinalCircuit(earthing, new Voltage(volts), new Current(32));
        assertThat(time.orElseThrow().value().si()).isEqualTo(seconds);
    }

    /** 5 s in TN, 1 s in TT: https://elektroseminar.de/Abschaltbedingungen.html. */
    @Test
    void otherCircuits() {
        var mains = new Voltage(230);
        assertThat(DisconnectionTimes.ofFinalCircuit(SystemEarthing.TN, mains, new Current(40))
                        .orElseThrow()
                        .value()
                        .si())
                .isEqualTo(5);
        assertThat(DisconnectionTimes.ofDistributionCircuit(SystemEarthing.TT, mains)
                        .orElseThrow()
                        .value()
                        .si())
                .isEqualTo(1);
    }

    @Test
    void nothingIsAskedOfExtraLowVoltageNorOfFirstFaultsInIt() {
        assertThat(DisconnectionTimes.ofFinalCircuit(SystemEarthing.TN, new Voltage(50), new Current(10)))
                .isEmpty();
        assertThat(DisconnectionTimes.ofFinalCircuit(SystemEarthing.IT, new Voltage(230), new Current(10)))
                .isEmpty();
    }

    /** IEC 60909-0 Table 1 as open short-circuit programs have it (github.com/e2nIEE/pandapower: 6 % 1.05, 10 % 1.1). */
    @Test
    void voltageFactors() {
        assertThat(VoltageFactors.highest(0.05).orElseThrow().value()).isEqualTo(1.05);
        assertThat(VoltageFactors.highest(0.06).orElseThrow().value()).isEqualTo(1.05);
        assertThat(VoltageFactors.highest(0.07).orElseThrow().value()).isEqualTo(1.1);
        assertThat(VoltageFactors.lowest(0.06).orElseThrow().value()).isEqualTo(0.95);
        assertThat(VoltageFactors.lowest(0.1).orElseThrow().value()).isEqualTo(0.9);
        assertThat(VoltageFactors.highest(0.11)).isEmpty();
    }
}
