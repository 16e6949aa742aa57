package io.axiswright.engine.controlpower;

import static io.axiswright.engine.controlpower.ControlParts.MAINS;
import static io.axiswright.engine.controlpower.ControlParts.cable;
import static io.axiswright.engine.controlpower.ControlParts.celsius;
import static io.axiswright.engine.controlpower.ControlParts.load;
import static io.axiswright.engine.controlpower.ControlParts.node;
import static io.axiswright.engine.controlpower.ControlParts.supply;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.AltitudeRule;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** About 1.2 A of load on 5 m of 6 mm², which loses next to nothing; reserve 20 %. */
class ParallelSuppliesTest {

    private static final ControlNode LOAD = node("g", "p", 1, null, 5, load("x", 0, 22, null));

    private static ControlSupply parallel(
            String id, double price, double current, @Nullable AltitudeRule rule, int most) {
        ControlSupply s = supply(id, price, current);
        return Copies.with(
                Copies.with(Copies.with(s, "altitude", rule), "inputInrush", new Current(30)), "maxParallel", most);
    }

    private static ControlPowerResult size(boolean redundant, double altitude, ControlSupply... supplies) {
        return new ControlPowerSizing()
                .size(new ControlPowerRequest(
                        new ControlPower("panel", 0.2, true, null, null, redundant, null),
                        new Site(celsius(40), celsius(40), new Length(altitude)),
                        MAINS,
                        List.of(LOAD),
                        List.of(supplies),
                        List.of(cable("c", 10, 5, "6 mm2"))));
    }

    private static List<FindingCode> codes(ControlPowerResult result) {
        return result.findings().stream().map(Finding::code).toList();
    }

    /** 28 W at 23.7 V and 20 % are 1.42 A: two of 1 A, as three cost more and one is too small. */
    @Test
    void asManyInParallelAsItTakes() {
        var placed = size(false, 0, parallel("one", 40, 1, null, 4)).supplies().getFirst();
        assertThat(placed.count()).isEqualTo(2);
        assertThat(placed.spare()).isZero();
        assertThat(placed.availableCurrent().si()).isEqualTo(2);
        assertThat(placed.inputInrush()).isEqualTo(new Current(60));
        // the energy of both lasts twice as long: 100 ms · 2 A/1.18 A
        assertThat(placed.holdUp().si())
                .isCloseTo(0.1 * 2 / placed.steadyCurrent().si(), within(1e-9));
    }

    /** With one spare the same takes three of 1 A at 120, or two of 2 A at 110. */
    @Test
    void oneMoreThanItTakesWhereOneMayFail() {
        var placed = size(true, 0, parallel("one", 40, 1, null, 4), parallel("two", 55, 2, null, 2))
                .supplies()
                .getFirst();
        assertThat(placed.item()).isEqualTo("two");
        assertThat(placed.count()).isEqualTo(2);
        assertThat(placed.spare()).isEqualTo(1);
        assertThat(placed.availableCurrent().si()).isEqualTo(2);
        assertThat(size(true, 0, parallel("one", 40, 1, null, 4))
                        .supplies()
                        .getFirst()
                        .count())
                .isEqualTo(3);
    }

    @Test
    void aSupplyThatStandsAloneIsNotRedundant() {
        var result = size(true, 0, supply("alone", 50, 10));
        assertThat(codes(result)).contains(FindingCode.CONTROL_REDUNDANCY_NONE);
        assertThat(codes(size(false, 0, supply("alone", 50, 10)))).doesNotContain(FindingCode.CONTROL_REDUNDANCY_NONE);
    }

    /** 1 % per 100 m above 2000 m: 10 % less at 3000 m. */
    @Test
    void altitudeDeratesTheSupply() {
        var rule = new AltitudeRule(new Length(2000), 0.01);
        assertThat(size(false, 3000, parallel("s", 40, 5, rule, 1))
                        .supplies()
                        .getFirst()
                        .availableCurrent()
                        .si())
                .isCloseTo(4.5, within(1e-12));
    }
}
