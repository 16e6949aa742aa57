package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static io.axiswright.engine.duty.Fixtures.axis;
import static io.axiswright.engine.duty.Fixtures.dwell;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.axiswright.engine.design.Collar;
import io.axiswright.engine.design.Conveyor;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.EndFixity;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.ScrewThread;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.design.WinderMotion;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Threads, supports, nuts, conveyors and cranks against worked examples of textbooks. */
class PublishedMechanismsTest {

    private static final double INCH = 0.0254;
    private static final double POUND_FORCE = 4.4482216152605;
    private static final double POUND_INCH = POUND_FORCE * INCH;
    private static final double ACME = Math.toRadians(14.5);

    private static Screw screw(double lead, double friction, double diameter, double flank, @Nullable Collar collar) {
        return new Screw(
                new Length(lead),
                new Length(diameter),
                new Length(0.0001),
                new Mass(0),
                new Angle(0),
                null,
                null,
                null,
                new ScrewThread(friction, new Length(diameter), new Angle(flank), collar),
                null,
                null,
                null,
                null);
    }

    private static double torque(Mechanism mechanism, List<Gear> gears, double process, double speed) {
        Drivetrain drivetrain = Drivetrain.of(Fixtures.geared("a", mechanism, gears, ANY, dwell(1)));
        return at(drivetrain, drivetrain.mechanics().start(), process, speed, 0);
    }

    private static double at(
            Drivetrain drivetrain, double position, double process, double speed, double acceleration) {
        LoadMotion motion =
                LoadMotion.of(position, Polynomial.of(speed, acceleration), 1e-9 / Math.abs(speed), Math.signum(speed));
        return drivetrain
                .moving(drivetrain.mechanics().effort(0, process), 0, motion)
                .getFirst()
                .torque()
                .at(0);
    }

    /** Shigley 8th ed., solutions 8-4: raising 10.23 + 6 = 16.23 N·m, lowering 0.622 + 6 = 6.622 N·m, self-locking, e 0.294. */
    @Test
    void squareThreadWithCollar() {
        Screw screw = screw(0.005, 0.08, 0.0225, 0, new Collar(0.05, new Length(0.04)));
        assertThat(torque(screw, List.of(), 6000, 0.01)).isCloseTo(16.2326, withinPercentage(0.01));
        assertThat(torque(screw, List.of(), 6000, -0.01)).isCloseTo(-6.62183, withinPercentage(0.01));
        Efficiency efficiency = Efficiency.of(java.util.Objects.requireNonNull(screw.thread()), 0.005);
        assertThat(efficiency.driving()).isCloseTo(0.294140, withinPercentage(0.01));
        Efficiency thread = Efficiency.of(new ScrewThread(0.08, new Length(0.0225), new Angle(0), null), 0.005);
        assertThat(thread.selfLocking()).isTrue();
    }

    /** Shigley 8th ed., solutions 8-6: press with two Acme screws, printed 377.6 + 375 = 753 lbf·in each, motor 21.1 lbf·in. */
    @Test
    void pressWithTwoAcmeScrews() {
        Screw screw = screw(0.5 * INCH, 0.05, 2.75 * INCH, ACME, new Collar(0.06, new Length(5 * INCH)));
        assertThat(torque(screw, List.of(), 2500 * POUND_FORCE, 0.001) / POUND_INCH)
                .isCloseTo(752.602, withinPercentage(0.01));
        Gear gear = new Gear(75, 0.95, null, new Inertia(0));
        assertThat(torque(screw, List.of(gear), 2 * 2500 * POUND_FORCE, 0.001) / POUND_INCH)
                .isCloseTo(21.1257, withinPercentage(0.01));
    }

    /** Wentzell ex. 18.1 to 18.3, pp. 399-402: square 453.68 lbf·in, 33.91 %, self-locking; Acme 428.13 lbf·in, 1.59 hp. */
    @Test
    void twoThreadsUnderTheSameLoad() {
        Screw square = screw(INCH / 3, 0.15, 1.354 * INCH, 0, null);
        assertThat(torque(square, List.of(), 2900 * POUND_FORCE, 0.01) / POUND_INCH)
                .isCloseTo(453.677, withinPercentage(0.01));
        Efficiency efficiency = Efficiency.of(java.util.Objects.requireNonNull(square.thread()), INCH / 3);
        assertThat(efficiency.driving()).isCloseTo(0.33912, withinPercentage(0.01));
        assertThat(efficiency.selfLocking()).isTrue();
        Screw acme = screw(0.25 * INCH, 0.15, 1.375 * INCH, ACME, null);
        double torque = torque(acme, List.of(), 2900 * POUND_FORCE, 0.01);
        assertThat(torque / POUND_INCH).isCloseTo(428.128, withinPercentage(0.01));
        assertThat(torque * 233.3 * 2 * Math.PI / 60 / 745.6998715822702).isCloseTo(1.58566, withinPercentage(0.1));
    }

    /**
     * Mott, Machine Elements in Mechanical Design, 4th ed., p. 703: Acme, raise printed 1809 lbf·in (hand rounding; right is
     * 1814.4), efficiency printed 0.275 (0.2741); lowering must be driven with 795.7 lbf·in.
     */
    @Test
    void acmeScrewBothDirections() {
        Screw acme = screw(0.25 * INCH, 0.15, 1.3429 * INCH, ACME, null);
        assertThat(torque(acme, List.of(), 12_500 * POUND_FORCE, 0.01) / POUND_INCH)
                .isCloseTo(1814.4, withinPercentage(0.01));
        assertThat(torque(acme, List.of(), 12_500 * POUND_FORCE, -0.01) / POUND_INCH)
                .isCloseTo(-795.7, withinPercentage(0.01));
    }

    /** Jindal, Machine Design, ex. 16-1, p. 450: 20 kN, mean diameter 27, pitch 6, f 0.2; collar f 0.15 at 12 mm: 110.148 N·m. */
    @Test
    void collarOfUniformWear() {
        Screw screw = screw(0.006, 0.2, 0.027, 0, new Collar(0.15, new Length(0.024)));
        assertThat(torque(screw, List.of(), 20_000, 0.01)).isCloseTo(110.148, withinPercentage(0.01));
    }

    /**
     * Shigley, Mechanical Engineering Design, 8th ed., solution 4-77: a pinned round bar of 7/8 in and 18 in, yield 37.5 kpsi,
     * stiffness 30 Mpsi: 17 714 lbf by Johnson. The length makes up for the stiffness, as only L²/E counts.
     */
    @Test
    void bucklingOfAStoutStrut() {
        double inch = 0.0254;
        double psi = 6894.757;
        double length = 18 * inch * Math.sqrt(Column.STIFFNESS / (30e6 * psi));
        Column column = new Column(0.875 * inch, length, EndFixity.SUPPORTED_SUPPORTED, 37.5e3 * psi);
        assertThat(column.stout()).isTrue();
        assertThat(column.bucklingForce()).isCloseTo(17_714 * 4.448222, withinPercentage(0.02));
    }

    /**
     * Shigley, Mechanical Engineering Design, 9th ed., ex. 4-17, p. 187: 500 MPa and 207 GPa part at a slenderness of 90.4; 1.5 m of
     * 37.48 mm bear 88 kN by Euler.
     */
    @Test
    void slendernessAtWhichEulerBegins() {
        double yield = 500e6 * Column.STIFFNESS / 207e9;
        double quarter = 0.01;
        assertThat(new Column(4 * quarter, 90.35 * quarter, EndFixity.SUPPORTED_SUPPORTED, yield).stout())
                .isTrue();
        assertThat(new Column(4 * quarter, 90.45 * quarter, EndFixity.SUPPORTED_SUPPORTED, yield).stout())
                .isFalse();
        Column slender = new Column(0.03748, 1.5, EndFixity.SUPPORTED_SUPPORTED, yield);
        assertThat(slender.bucklingForce() * 207e9 / Column.STIFFNESS).isCloseTo(88e3, withinPercentage(0.1));
    }

    /** Jindal ex. 7-6, p. 195: pinned strut of 280 mm, 8/6.4 mm, 207 GPa: 3093.4 N; a round bar of the same second moment. */
    @Test
    void bucklingOfAPinnedStrut() {
        double root = Math.pow(Math.pow(8, 4) - Math.pow(6.4, 4), 0.25) / 1000;
        Column column = new Column(root, 0.28, EndFixity.SUPPORTED_SUPPORTED, Double.POSITIVE_INFINITY);
        assertThat(column.bucklingForce() * 207e9 / Column.STIFFNESS).isCloseTo(3093.4, withinPercentage(0.01));
    }

    /**
     * Factors of n = f·d/L²·10⁷ 1/min and F = q·d⁴/L²·10⁴ N for steel in mm, worked out from beam theory by the reference of this
     * project; the lowest roots of the beam equations are found here again (Thomson and Dahleh, Theory of Vibration with
     * Applications, table 9.5-1: 3.52, 9.87, 15.4, 22.4).
     */
    @ParameterizedTest
    @CsvSource({
        "FIXED_FREE, 4.300, 2.495, 3.52",
        "SUPPORTED_SUPPORTED, 12.070, 9.980, 9.87",
        "FIXED_SUPPORTED, 18.856, 20.41, 15.4",
        "FIXED_FIXED, 27.361, 39.92, 22.4"
    })
    void factorsOfEndFixity(EndFixity ends, double whirling, double buckling, double printed) {
        Column column = new Column(0.02, 1, ends, Double.POSITIVE_INFINITY);
        double revolutions = column.criticalSpeed() * 60 / (2 * Math.PI);
        assertThat(revolutions).isCloseTo(whirling * 20 / 1e6 * 1e7, withinPercentage(0.02));
        assertThat(column.bucklingForce()).isCloseTo(buckling * Math.pow(20, 4) / 1e6 * 1e4, withinPercentage(0.05));
        assertThat(column.modeNumber()).isCloseTo(printed, withinPercentage(0.5));
        double root = new BrentSolver(1e-14)
                .solve(
                        200,
                        u -> switch (ends) {
                            case FIXED_FREE -> Math.cos(u) * Math.cosh(u) + 1;
                            case SUPPORTED_SUPPORTED -> Math.sin(u);
                            case FIXED_SUPPORTED -> Math.tan(u) - Math.tanh(u);
                            case FIXED_FIXED -> Math.cos(u) * Math.cosh(u) - 1;
                        },
                        switch (ends) {
                            case FIXED_FREE -> 1.5;
                            case SUPPORTED_SUPPORTED -> 3;
                            case FIXED_SUPPORTED -> 3.8;
                            case FIXED_FIXED -> 4.5;
                        },
                        switch (ends) {
                            case FIXED_FREE -> 2.5;
                            case SUPPORTED_SUPPORTED -> 3.5;
                            case FIXED_SUPPORTED -> 4.1;
                            case FIXED_FIXED -> 5;
                        });
        assertThat(column.modeNumber()).isCloseTo(root * root, within(1e-9));
    }

    /** The buckling length between a fixed and a supported end: pi over the root of tan u = u. */
    @Test
    void bucklingLengthOfAFixedAndASupportedEnd() {
        double root = new BrentSolver(1e-14).solve(200, u -> Math.sin(u) - u * Math.cos(u), 4, 5);
        assertThat(new Column(1, 1, EndFixity.FIXED_SUPPORTED, Double.POSITIVE_INFINITY).bucklingLengthShare())
                .isCloseTo(Math.PI / root, within(1e-8));
    }

    /**
     * The cubic law of life, as for ball bearings: 16 kN under 2 kN 512 million turns (sarthaks.com question 2642436); Wentzell
     * ex. 20.1, p. 431, 5050 lbf under 2400 lbf at 1750 1/min 88.73 h; Jindal ex. 18-2, p. 508, 5590 N under 1450 N 57.3 million.
     */
    @Test
    void lifeGoesWithTheCube() {
        assertThat(new NutLife(1, 2000, 0).lifeTurns(16_000)).isCloseTo(512e6, withinPercentage(1e-9));
        assertThat(new NutLife(1, 0, 2400).lifeTurns(5050) / 1750 / 60).isCloseTo(88.73, withinPercentage(0.01));
        assertThat(new NutLife(1, 1450, 0).lifeTurns(5590)).isCloseTo(57.297e6, withinPercentage(0.01));
    }

    /** Gupta & Singhal ex. 3.6, p. 36: 100 t/h over 200 m at 1.2 m/s, motor 1200 1/min, J 0.1, 8 s: 0.4222 kg·m² and 8.2 N·m. */
    @Test
    void conveyor() {
        double speed = 1200 * 2 * Math.PI / 60;
        double goods = 100_000 / 3600.0 * 200 / 1.2;
        Conveyor conveyor = new Conveyor(
                new Length(2 * 1.2 / speed),
                new Inertia(0.1),
                null,
                null,
                0,
                new Mass(0),
                new Mass(goods),
                new Angle(0),
                1,
                null,
                null);
        Drivetrain drivetrain = Drivetrain.of(axis("a", conveyor, null, ANY, dwell(1)));
        assertThat(drivetrain.reflectedInertia(
                                drivetrain.mechanics().effort(0, 0).largestInertia(0, 0))
                        - 0.1)
                .isCloseTo(0.4222, withinPercentage(0.1));
        assertThat(at(drivetrain, 0, 0, 1, 1.2 / 8)).isCloseTo(8.2, withinPercentage(0.1));
    }

    /**
     * Khurmi & Gupta ex. 15.7, p. 534: r 0.3 m, rod 1.2 m, 250 kg, bore 0.5 m, 0.35 N/mm², 60° and 250 1/min; printed 14.491 kN·m
     * with the piston's acceleration of two terms, 14 489.5 N·m exact. The gas drives: the crank gives the torque.
     */
    @Test
    void sliderCrank() {
        Crank crank = new Crank(
                new Length(0.3),
                new Length(1.2),
                new Inertia(0),
                new Mass(250),
                new Angle(0),
                new Angle(Math.toRadians(60)),
                1,
                null,
                null,
                null,
                null,
                null);
        double gas = 0.35e6 * Math.PI / 4 * 0.5 * 0.5;
        Drivetrain drivetrain = Drivetrain.of(axis("a", crank, null, ANY, dwell(1)));
        double torque = -at(drivetrain, Math.toRadians(60), -gas, 250 * 2 * Math.PI / 60, 0);
        assertThat(torque).isCloseTo(14_489.5, withinPercentage(0.001));
        assertThat(torque).isCloseTo(14_491, withinPercentage(0.02));
    }

    /** By hand: a crank in a straight slot moves as the sine, so that T = m·r²·s·c·w² + F·r·s. */
    @Test
    void crankInASlot() {
        Crank crank = new Crank(
                new Length(0.1),
                null,
                new Inertia(0.2),
                new Mass(8),
                new Angle(Math.PI / 2),
                new Angle(1),
                1,
                null,
                null,
                null,
                null,
                null);
        Drivetrain drivetrain = Drivetrain.of(axis("a", crank, null, ANY, dwell(1)));
        double s = Math.sin(1);
        double c = Math.cos(1);
        assertThat(at(drivetrain, 1, 50, 20, 3))
                .isCloseTo(8 * 0.01 * (s * s * 3 + s * c * 400) + (8 * 9.80665 + 50) * 0.1 * s + 0.2 * 3, within(1e-9));
    }

    /** By hand: at constant web speed the torque goes with the radius, the power stays F·v, and half the roll weighs as it should. */
    @Test
    void winderAtConstantTension() {
        Winder winder = new Winder(
                WinderMotion.LINE,
                new Length(0.1),
                new Inertia(0),
                new Length(0.5),
                new Mass(60),
                new Length(1e-4),
                new Length(0.1),
                new Force(80),
                new Torque(0),
                1,
                null);
        Drivetrain drivetrain = Drivetrain.of(axis("a", winder, null, ANY, dwell(1)));
        double wound = Math.PI * (0.2 * 0.2 - 0.05 * 0.05) / 1e-4;
        double inertia = 60 / 2.0 * (Math.pow(0.2, 4) - Math.pow(0.05, 4)) / (0.25 * 0.25 - 0.05 * 0.05);
        double slowing = -1e-4 * 9 / (2 * Math.PI * Math.pow(0.2, 3));
        assertThat(at(drivetrain, wound, 0, 3, 0)).isCloseTo(80 * 0.2 + inertia * slowing, within(1e-9));
        assertThat(drivetrain.mechanics().effort(0, 0).largestInertia(0, wound)).isCloseTo(inertia, within(1e-12));
    }

    /** Gears in series by hand: losses multiply, each inertia goes with its own shaft (Gupta & Singhal ch. 3, the rule). */
    @Test
    void gearsInSeries() {
        Gear first = new Gear(4, 0.9, null, new Inertia(0.001), new Torque(0.2));
        Gear second = new Gear(5, 0.8, null, new Inertia(0.02));
        DirectDrive load = new DirectDrive(new Inertia(3), new Torque(10), null, null);
        Drivetrain drivetrain = Drivetrain.of(Fixtures.geared("a", load, List.of(first, second), ANY, dwell(1)));
        double between = (3 * 2 + 10.0) / 5 / 0.8 + 0.02 * 5 * 2;
        assertThat(at(drivetrain, 0, 0, 1, 2)).isCloseTo(between / 4 / 0.9 + 0.2, within(1e-9));
        assertThat(drivetrain.reflectedInertia(3)).isCloseTo((3 / 25.0 + 0.02) / 16 + 0.001, within(1e-12));
        assertThat(drivetrain.ratio()).isEqualTo(20);
    }

    /** Dubey ex. 4.3, p. 53: a ramp to 400 kW in 5 min, 500 kW 5 min, 400 kW returned 4 min, idle 2 min: 367 kW (367.140). */
    @Test
    void rmsOfARampAndAReturn() {
        Polynomial zero = Polynomial.ZERO;
        LoadEffort none = new EvenEffort(1, 0, 0, 0, 0, 0, 0);
        List<LoadPiece> pieces = List.of(
                LoadPiece.of(0, 5, zero, zero, zero, Polynomial.of(0, 80), zero, none),
                LoadPiece.of(5, 5, zero, zero, zero, Polynomial.of(500), zero, none),
                LoadPiece.of(10, 4, zero, zero, zero, Polynomial.of(-400), zero, none),
                LoadPiece.of(14, 2, zero, zero, zero, zero, zero, none));
        assertThat(LoadSums.of(pieces, 16).rmsTorque(0)).isCloseTo(367.140, withinPercentage(0.001));
    }

    /** J. B. Gupta ex. 57, p. 152: 100 kW 10 min, 50 kW 8 min, idle 5 + 4 min: 66.67 kW; 81.65 leaves the idle time out. */
    @Test
    void rmsCountsTheIdleTime() {
        Polynomial zero = Polynomial.ZERO;
        LoadEffort none = new EvenEffort(1, 0, 0, 0, 0, 0, 0);
        List<LoadPiece> pieces = List.of(
                LoadPiece.of(0, 10, zero, zero, zero, Polynomial.of(100), zero, none),
                LoadPiece.of(10, 5, zero, zero, zero, zero, zero, none),
                LoadPiece.of(15, 8, zero, zero, zero, Polynomial.of(50), zero, none),
                LoadPiece.of(23, 4, zero, zero, zero, zero, zero, none));
        assertThat(LoadSums.of(pieces, 27).rmsTorque(0)).isCloseTo(66.6667, withinPercentage(0.001));
    }
}
