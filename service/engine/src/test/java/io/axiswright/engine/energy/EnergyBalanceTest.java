package io.axiswright.engine.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Operation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The energy of a year, by hand. */
class EnergyBalanceTest {

    private static final double KILOWATT_HOUR = 3.6e6;

    /** 4000 h a year at 0.25 EUR a kilowatt-hour. */
    private static final Operation PRICED =
            new Operation(new Time(4000 * 3600.0), new Money(new BigDecimal("0.25"), "EUR"), null);

    private static EnergyResult balance(Operation operation, AxisPower... axes) {
        return new EnergyBalance()
                .balance(new EnergyRequest(
                        operation,
                        List.of(axes),
                        List.of(new BusPower("bus", List.of("x", "y"), new Power(70), new Power(20), false)),
                        List.of(new ControlSupplyPower("S1", new Power(100), new Power(12))),
                        new Power(25),
                        List.of(new ConductorLoss("feeder", new Power(5)), new ConductorLoss("C1", new Power(3))),
                        List.of()));
    }

    private static AxisPower axis(String id, double motored, double returned, @Nullable Power loadLoss) {
        return new AxisPower(
                id, new Power(motored), new Power(returned), new Power(30), new Power(15), loadLoss, new Power(40));
    }

    private static EnergyResult balance() {
        return balance(PRICED, axis("x", 500, 60, new Power(10)), axis("y", 200, 40, new Power(5)));
    }

    private static double kilowattHours(YearlyUse use) {
        return use.energy().si() / KILOWATT_HOUR;
    }

    /**
     * Shafts 500 − 60 + 200 − 40 = 600 W, copper 60 W, electronics 30 W and 15 W by load, resistors 20 W, fans 80 W, control
     * power 88 W and 12 W, transformers 25 W, conductors 8 W: 938 W, in 4000 h 3752 kWh, at 0.25 EUR 938.00 EUR.
     */
    @Test
    void wholeMachine() {
        EnergyResult result = balance();
        assertThat(result.total().meanPower().si()).isCloseTo(938, within(1e-9));
        assertThat(kilowattHours(result.total())).isCloseTo(3752, within(1e-9));
        assertThat(result.total().cost()).isEqualTo(new Money(new BigDecimal("938.00"), "EUR"));
        assertThat(result.shares())
                .extracting(
                        EnergyShare::purpose,
                        s -> Math.round(s.use().meanPower().si() * 1e6) / 1e6)
                .containsExactly(
                        tuple(EnergyPurpose.SHAFT_WORK, 600.0),
                        tuple(EnergyPurpose.MOTOR_COPPER, 60.0),
                        tuple(EnergyPurpose.ELECTRONICS_STANDBY, 30.0),
                        tuple(EnergyPurpose.ELECTRONICS_LOAD, 15.0),
                        tuple(EnergyPurpose.BRAKING_RESISTORS, 20.0),
                        tuple(EnergyPurpose.VENTILATION, 80.0),
                        tuple(EnergyPurpose.CONTROL_POWER, 88.0),
                        tuple(EnergyPurpose.CONTROL_SUPPLIES, 12.0),
                        tuple(EnergyPurpose.TRANSFORMERS, 25.0),
                        tuple(EnergyPurpose.CONDUCTORS, 8.0));
        assertThat(result.shares().stream().mapToDouble(EnergyShare::share).sum())
                .isCloseTo(1, within(1e-12));
        assertThat(result.findings()).isEmpty();
    }

    /** x: 500 − 60 + 30 + 15 + 10 + 40 = 535 W; in 4000 h 2140 kWh, 535.00 EUR. */
    @Test
    void everyAxis() {
        AxisEnergy x = balance().axes().getFirst();
        assertThat(kilowattHours(x.net())).isCloseTo(2140, within(1e-9));
        assertThat(x.net().cost()).isEqualTo(new Money(new BigDecimal("535.00"), "EUR"));
        assertThat(x.returned().si() / KILOWATT_HOUR).isCloseTo(240, within(1e-9));
    }

    /** The bus takes 600 + 60 + 30 = 690 W for good and 20 W for its resistors; of 70 W returned 50 W are used again. */
    @Test
    void everyBus() {
        BusEnergy bus = balance().buses().getFirst();
        assertThat(bus.supplied().meanPower().si()).isCloseTo(710, within(1e-9));
        assertThat(kilowattHours(bus.burned())).isCloseTo(80, within(1e-9));
        assertThat(bus.reused().si() / KILOWATT_HOUR).isCloseTo(200, within(1e-9));
    }

    @Test
    void partsAddUpToTheWhole() {
        EnergyResult result = balance();
        double parts =
                result.axes().stream().mapToDouble(a -> a.net().energy().si()).sum()
                        + result.buses().stream()
                                .mapToDouble(b -> b.burned().energy().si())
                                .sum()
                        + result.controlSupplies().stream()
                                .mapToDouble(s -> s.drawn().energy().si())
                                .sum()
                        + result.conductors().stream()
                                .mapToDouble(c -> c.lost().energy().si())
                                .sum()
                        + 25 * 4000 * 3600;
        assertThat(parts).isCloseTo(result.total().energy().si(), within(1e-9 * parts));
    }

    @Test
    void withoutPriceThereIsNoCost() {
        EnergyResult result =
                balance(new Operation(new Time(3600), null, null), axis("x", 1, 0, null), axis("y", 1, 0, null));
        assertThat(result.total().cost()).isNull();
    }

    /** A lowering axis that gives back more than it takes has no negative cost. */
    @Test
    void whatGivesBackCostsNothing() {
        EnergyResult result = balance(PRICED, axis("x", 0, 300, null), axis("y", 500, 0, null));
        assertThat(result.axes().getFirst().net().meanPower().si()).isCloseTo(-215, within(1e-9));
        assertThat(result.axes().getFirst().net().cost()).isNull();
    }

    /** Halves are rounded up: 0.5 kWh at 0.25 EUR are 0.125 EUR. */
    @Test
    void costIsRoundedHalfUpToTheMinorUnit() {
        var year = new Year(new Operation(new Time(3600), new Money(new BigDecimal("0.25"), "EUR"), null));
        assertThat(year.use(500).cost()).isEqualTo(new Money(new BigDecimal("0.13"), "EUR"));
        var yen = new Year(new Operation(new Time(3600), new Money(new BigDecimal("25"), "JPY"), null));
        assertThat(yen.use(500).cost()).isEqualTo(new Money(new BigDecimal("13"), "JPY"));
    }

    @Test
    void saysWhoseLoadLossIsNotKnown() {
        assertThat(balance(PRICED, axis("x", 1, 0, null), axis("y", 1, 0, new Power(1)))
                        .findings())
                .singleElement()
                .satisfies(f -> assertThat(f.code()).isEqualTo(FindingCode.ENERGY_LOAD_LOSS_UNKNOWN))
                .extracting(Finding::text)
                .asString()
                .contains("for 1 of 2 drive units");
    }
}
