package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Voltage;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Which holding brake is chosen for what it has to hold and to stop. */
class BrakeNeedTest {

    /**
     * By hand, as the vertical axis of the stopping tests: 0.004 kg·m² and 2 N·m of weight at 100 rad/s. Until the brake bites after
     * 50 ms it has sped up with 500 rad/s² to 125 rad/s; 6 N·m against 2 stop it over 125²/(2·1000) = 7.8125 rad, 46.875 J.
     */
    private static final BrakeNeed NEED = new BrakeNeed(3, 2, 0.004, 100);

    private static HoldingBrake brake(
            String id, int price, double torque, @Nullable Double share, @Nullable Double energy) {
        return new HoldingBrake(
                id,
                "invented",
                new Money(BigDecimal.valueOf(price), "EUR"),
                List.of(),
                "80",
                new Torque(torque),
                new Inertia(0),
                new Power(12),
                new Power(12),
                new Voltage(20),
                new Time(0.05),
                new Time(0.05),
                share,
                energy == null ? null : new Energy(energy));
    }

    private static @Nullable String chosen(HoldingBrake... brakes) {
        HoldingBrake chosen = new BrakeStock(List.of(brakes)).cheapest("80", NEED);
        return chosen == null ? null : chosen.id();
    }

    @Test
    void theEnergyOfAStopDecides() {
        assertThat(NEED.stoppedBy(brake("b", 1, 6, null, 46.88))).isTrue();
        assertThat(NEED.stoppedBy(brake("b", 1, 6, null, 46.87))).isFalse();
        assertThat(chosen(brake("cheap", 1, 6, null, 40.0), brake("dear", 2, 6, null, 50.0)))
                .isEqualTo("dear");
    }

    /** Of 4 N·m half is left in a stop, no more than the weight pulls with. */
    @Test
    void theTorqueOfAStopDecides() {
        assertThat(chosen(brake("cheap", 1, 4, 0.5, null), brake("dear", 2, 6, 0.5, null)))
                .isEqualTo("dear");
    }

    @Test
    void whereNoneSurelyStopsTheCheapestThatHoldsIsTaken() {
        assertThat(chosen(
                        brake("weak", 1, 2.9, null, null),
                        brake("cheap", 2, 6, null, 40.0),
                        brake("dear", 3, 6, null, 41.0)))
                .isEqualTo("cheap");
        assertThat(chosen(brake("weak", 1, 2.9, null, null))).isNull();
    }

    @Test
    void whatIsNotStatedIsNotJudged() {
        assertThat(chosen(brake("cheap", 1, 3, null, null), brake("dear", 2, 6, null, 50.0)))
                .isEqualTo("cheap");
    }
}
