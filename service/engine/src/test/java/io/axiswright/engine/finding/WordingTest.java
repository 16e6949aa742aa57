package io.axiswright.engine.finding;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Torque;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Expected: what one would write on a note. 100 rad/s are 100 · 30/π = 954.9 rev/min; 19.29 GJ are 19290 / 3.6 = 5358 kW·h. */
class WordingTest {

    static Stream<Arguments> pairs() {
        return Stream.of(
                Arguments.of(new Ratio(0.1093), new Ratio(0.05014), "from 0.1093 to 0.05014"),
                Arguments.of(new Ratio(0.012), new Ratio(0.05), "from 1.2 % to 5 %"),
                Arguments.of(new Ratio(2), new Ratio(0.0001), "from 2 to 0.0001"),
                Arguments.of(new Length(0.05), new Length(1.2), "from 0.05 m to 1.2 m"),
                Arguments.of(new Length(0.05), new Length(0.0603), "from 50 mm to 60.3 mm"),
                Arguments.of(new Length(2), new Length(0.00015), "from 2 m to 0.15 mm"),
                Arguments.of(new Area(0), new Area(16e-6), "from 0 mm2 to 16 mm2"),
                Arguments.of(new Torque(3.64801), new Torque(3.64804), "from 3.64801 N.m to 3.64804 N.m"),
                Arguments.of(new Temperature(273.15), new Temperature(313.15), "from 0 Cel to 40 Cel"),
                Arguments.of(
                        new AngularSpeed(0),
                        new AngularSpeed(100),
                        "from 0 rad/s (0 rev/min) to 100 rad/s (954.9 rev/min)"),
                Arguments.of(new Energy(19.29e9), new Energy(20.15e9), "from 5358 kW.h to 5597 kW.h"),
                Arguments.of(new Pressure(2e6), new Pressure(5e6), "from 2 MPa to 5 MPa"),
                Arguments.of(new Length(0.0001), new Torque(3), "from 0.1 mm to 3 N.m"));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void twoBesideEachOtherShareAUnitAndDiffer(Quantity before, Quantity after, String words) {
        assertThat(Wording.fromTo(before, after)).isEqualTo(words);
    }
}
