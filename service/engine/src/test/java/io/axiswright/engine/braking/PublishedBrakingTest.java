package io.axiswright.engine.braking;

import static io.axiswright.engine.braking.BrakingFixtures.course;
import static io.axiswright.engine.braking.BrakingFixtures.once;
import static io.axiswright.engine.braking.BrakingFixtures.stretch;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Printed examples that hold for the electrical case too. */
class PublishedBrakingTest {

    private static final double FOOT_POUND = 1.3558179483314004;
    private static final double HORSEPOWER = 745.6998715822702;
    private static final double POUND = 0.45359237;
    private static final double FOOT = 0.3048;
    private static final double G = 9.80665;

    /**
     * Wentzell, example 16.5, p. 365: 3500 lb from 73 ft/s at 20 ft/s² into 40 lb of metal at 93 ft·lb/(lb·°F). Printed
     * 289 620 ft·lb, 77.85 °F, 3.65 s, 142.32 hp (the book rounds the time to 3.7 s).
     * github.com/FOSSEE/Python-Textbook-Companions, Chapter16.ipynb
     */
    @Test
    void energyPowerAndTemperatureOfOneStop() {
        double mass = 3500 * POUND * G / (32.2 * FOOT); // the book divides the weight by 32.2 ft/s²
        double speed = 73 * FOOT;
        double deceleration = 20 * FOOT;
        double time = speed / deceleration;
        // a mass on a wheel of 1 m radius without loss
        PowerCourse stop = PowerCourse.withoutLosses(course(stretch(time, speed, -deceleration, -mass * deceleration)));
        BusPower power = BusPower.once(List.of(stop));
        assertThat(time).isCloseTo(3.65, within(1e-9));
        assertThat(power.returned() / FOOT_POUND).isCloseTo(289_620, within(1.0));
        assertThat(power.returned() / 3.7 / HORSEPOWER).isCloseTo(142.32, within(0.01));

        double heatCapacity = 40 * 93 * FOOT_POUND * 1.8; // per K
        Bus bus = Bus.of(1e-4, 565, 3000);
        var chopper = new Chopper(bus.energy(780), bus.energy(765), 2 / (5 * 1e-4), heatCapacity, 1e9);
        BusTrace trace = new BusSimulation(bus, chopper).run(power, new BusState(bus.floorEnergy(), false, 0));
        assertThat(trace.peakRise() * 1.8).isCloseTo(77.85, within(0.01));
    }

    /**
     * Theraja, Electrical Technology vol. III, example 44.4, p. 1780: 500 t down 1 in 80 for 90 s, 100 to 60 km/h, resistance
     * 50 N/t, rotating masses +10 %, efficiency 0.75. Printed 43.43 kWh; first
     * principles with g = 9.81 give 43.4224.
     * github.com/FOSSEE/Python-Textbook-Companions, chapter44.ipynb
     */
    @Test
    void energyReturnedOnADescent() {
        double from = 100 / 3.6;
        double deceleration = (from - 60 / 3.6) / 90;
        double force = 550_000 * deceleration + 500_000 * 9.81 / 80 - 50 * 500;
        // efficiency multiplies what flows back
        PowerCourse descent = PowerCourse.withoutLosses(course(stretch(90, from, -deceleration, -0.75 * force)));
        double kilowattHours = BusPower.once(List.of(descent)).returned() / 3.6e6;
        assertThat(kilowattHours).isCloseTo(43.43, withPercentage(0.02));
        assertThat(kilowattHours).isCloseTo(43.4224, within(5e-5));
    }

    /**
     * Theraja vol. III, example 44.6, p. 1780: 350 t held at 60 km/h on 1.5 %, 50 N/t, efficiency 0.75. Printed 424.38 kW
     * (with g = 9.8; with 9.81 it is 425.03). Same notebook.
     */
    @Test
    void powerReturnedAtConstantSpeed() {
        assertThat(descent(9.8).peak() / 1000).isCloseTo(424.38, within(0.01));
        assertThat(descent(9.81).peak() / 1000).isCloseTo(425.03, within(0.01));
        // all of it goes through the resistor once the chopper works: the mean is the power
        Bus bus = Bus.of(0.1, 800, 2000);
        var chopper = new Chopper(bus.energy(1000), bus.energy(950), 2 / (2 * 0.1), 1e5, 1e4);
        CaseOutcome outcome =
                CommonPeriod.load(List.of(descent(9.81))).on(bus, chopper).outcome();
        assertThat(outcome.meanBurned() / 1000).isCloseTo(425.03, withPercentage(1.0));
    }

    private static PowerCourse descent(double gravity) {
        double force = 350_000 * gravity * 0.015 - 50 * 350;
        return PowerCourse.withoutLosses(course(stretch(10, 60 / 3.6, 0, -0.75 * force)));
    }

    /**
     * OpenStax, College Physics, chapter 21, problem 71: 80 µF through 250 kΩ has a time constant of 20 s and falls to
     * 0.250 % after 120 s (119.829 s unrounded). cdn.collegephysicsanswers.com, figure 21.58
     */
    @Test
    void capacitorThroughABleeder() {
        assertThat(bled(80e-6, 250e3, 1000, 20)).isCloseTo(1000 * Math.exp(-1), within(1e-9));
        assertThat(bled(80e-6, 250e3, 1000, 119.829)).isCloseTo(2.50, within(0.001));
        assertThat(bled(80e-6, 250e3, 1000, 120)).isCloseTo(2.50, within(0.03));
    }

    /** 5 µF at 12 V through 0.8 MΩ: 4.41 V after one time constant of 4 s. answers.quantarchive.com, 20210324055613AAXF6jw */
    @Test
    void capacitorAfterOneTimeConstant() {
        assertThat(bled(5e-6, 0.8e6, 12, 4)).isCloseTo(4.41, within(0.005));
    }

    private static double bled(double capacitance, double resistance, double voltage, double time) {
        Bus bus = Bus.of(capacitance, 0, 1e4);
        var always = new Chopper(bus.energy(voltage), 0, 2 / (resistance * capacitance), 1, 1);
        var start = new BusState(bus.energy(voltage), true, 0);
        return bus.voltage(
                new BusSimulation(bus, always).run(once(time, 0), start).end().energy());
    }
}
