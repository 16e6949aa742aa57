package io.axiswright.engine.conductor;

import static io.axiswright.engine.conductor.CircuitBuilder.nec;
import static io.axiswright.engine.conductor.Sizing.conductor;
import static io.axiswright.engine.conductor.Sizing.device;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Derivation;
import org.junit.jupiter.api.Test;

/** NFPA 70 430.24: 125 % of the largest motor or drive and the others once (read at up.codes/s/several-motors-or-a-motor-s-and-other-load-s). */
class SeveralMotorsTest {

    /**
     * ecmweb.com, "Stumped by the Code", 20 hp and 10 hp at 460 V: 27 · 1.25 + 14 = 47.75 A, so 8 AWG (50 A at 75 °C); 67.5 so
     * 70 A for the larger, 70 + 14 = 84, rounded down to 80 A. The page does it for a feeder; 430.53(C)(4) for a branch circuit
     * adds up the same way.
     */
    @Test
    void largestMotorAndTheOthersOnce() {
        var motors = nec(LoadKind.MOTOR_OR_DRIVE, 41).largest(27).insulation(Insulation.NEC_75);
        var answer = Sizing.nec(motors);
        assertThat(conductor(answer)).isEqualTo("8 AWG");
        assertThat(device(answer)).isEqualTo(80);
        Derivation demand =
                Sizing.run(CodeBasis.NFPA_79, motors.build()).derivations().getFirst();
        assertThat(demand.symbol()).isEqualTo("Id");
        assertThat(demand.clause()).isEqualTo("NFPA 70:2023 430.24");
        assertThat(demand.result().si()).isCloseTo(47.75, within(1e-9));
        // as one load of 41 A it would be 51.25 A, which 8 AWG does not carry
        assertThat(conductor(Sizing.nec(nec(LoadKind.MOTOR_OR_DRIVE, 41).insulation(Insulation.NEC_75))))
                .isEqualTo("6 AWG");
    }

    /** By hand: ten of 10 A. 25 + 90 = 115, down to 110 A; that protects conductors for 102.5 A too. */
    @Test
    void manySmallOnes() {
        assertThat(device(Sizing.nec(nec(LoadKind.MOTOR_OR_DRIVE, 100).largest(10))))
                .isEqualTo(110);
    }
}
