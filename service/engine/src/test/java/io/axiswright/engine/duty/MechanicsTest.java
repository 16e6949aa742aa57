package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static io.axiswright.engine.duty.Fixtures.axis;
import static io.axiswright.engine.duty.Fixtures.dwell;
import static io.axiswright.engine.duty.Fixtures.gear;
import static io.axiswright.engine.duty.Fixtures.hoist;
import static io.axiswright.engine.duty.Fixtures.table;
import static io.axiswright.engine.duty.Fixtures.travel;
import static io.axiswright.engine.duty.Fixtures.turn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Unbalance;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.LinearDamping;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Load to motor shaft against worked examples of textbooks. */
class MechanicsTest {

    private static final double INCH = 0.0254;
    private static final double POUND_FORCE = 4.4482216152605;

    /** Torque of a motor of given inertia that moves the load at a speed with an acceleration. */
    private static double torque(
            Drivetrain drivetrain, double process, double speed, double acceleration, double inertia) {
        LoadEffort effort = drivetrain.mechanics().effort(0, process);
        return drivetrain
                .moving(effort, 0, LoadMotion.of(0, Polynomial.of(speed, acceleration), 1e-6, Math.signum(speed)))
                .getFirst()
                .torque(inertia)
                .at(0);
    }

    private static Drivetrain of(Mechanism mechanism) {
        return Drivetrain.of(axis("a", mechanism, null, ANY, dwell(1)));
    }

    private static Drivetrain of(Mechanism mechanism, double ratio, double efficiency) {
        return Drivetrain.of(axis("a", mechanism, gear(ratio, efficiency), ANY, dwell(1)));
    }

    /** Dubey, Fundamentals of Electrical Drives, ex. 2.1, p. 16: printed 0.4 kg·m² and 117.53 N·m (0.401753 unrounded). */
    @Test
    void gearedTurntableAndHoistedMass() {
        double speed = 1420 * 2 * Math.PI / 60;
        double metresPerRadian = 1.5 / speed;
        Drivetrain rotary = of(table(10, 10, 1), 10, 0.9);
        Drivetrain lift = of(hoist(2 * metresPerRadian, 0, 1000, 0, 0.85));
        double inertia =
                0.2 + rotary.reflectedInertia(10) + lift.reflectedInertia(1000 * metresPerRadian * metresPerRadian);
        double torque = torque(rotary, 0, speed / 10, 0, 0) + torque(lift, 0, 1.5, 0, 0);
        assertThat(inertia).isCloseTo(0.401753, withinPercentage(0.1));
        assertThat(torque).isCloseTo(117.53, withinPercentage(0.1));
    }

    /** J. B. Gupta, Elements of Electric Drives, ex. 3, p. 18; B. R. Gupta & Singhal ex. 3.2, p. 34: 0.5, 5.556, 814.487 W. */
    @Test
    void gearedLoad() {
        Drivetrain drivetrain = of(table(10, 50, 1), 10, 0.9);
        double speed = 1400 * 2 * Math.PI / 60;
        double torque = torque(drivetrain, 0, speed / 10, 0, 0.4);
        assertThat(0.4 + drivetrain.reflectedInertia(10)).isCloseTo(0.5, withinPercentage(0.1));
        assertThat(torque).isCloseTo(5.556, withinPercentage(0.1));
        assertThat(torque * speed).isCloseTo(814.487, withinPercentage(0.1));
    }

    /** Wentzell, Machine Design, ex. 18.4, p. 405: T = 0.177·F·L, printed 256.65 in·lb and 0.48 hp (0.177 = 1/(2·pi·0.899)). */
    @Test
    void ballScrew() {
        Screw screw = new Screw(
                new Length(0.5 * INCH),
                new Length(0.03),
                new Length(0.0001),
                new Mass(0),
                new Angle(0),
                1 / (2 * Math.PI * 0.177),
                null,
                null);
        double speed = 116.7 / 60 * 0.5 * INCH;
        double torque = torque(of(screw), 2900 * POUND_FORCE, speed, 0, 0);
        double poundInches = torque / (POUND_FORCE * INCH);
        assertThat(poundInches).isCloseTo(256.65, withinPercentage(0.1));
        assertThat(torque * 116.7 * 2 * Math.PI / 60 / 745.6998715822702).isCloseTo(0.47528, withinPercentage(0.1));
    }

    /**
     * Shigley 8th ed. solutions 8-4: 6 kN, lead 5 mm; raising 16.23 N·m, lowering 6.622 N·m, efficiency 0.294, self-locking. A
     * screw known by its efficiency alone raises with the same torque and is known to be self-locking (2 − 1/eta < 0); its
     * lowering torque is that estimate, within 2 % of the thread's.
     */
    @Test
    void squareThreadByItsEfficiency() {
        Drivetrain drivetrain = of(new Screw(
                new Length(0.005),
                new Length(0.0225),
                new Length(0.0001),
                new Mass(0),
                new Angle(0),
                0.294140,
                null,
                null));
        assertThat(torque(drivetrain, 6000, 0.01, 0, 0)).isCloseTo(16.2326, withinPercentage(0.1));
        assertThat(drivetrain.selfLocking()).isTrue();
        assertThat(torque(drivetrain, 6000, -0.01, 0, 0)).isCloseTo(-6.622, withinPercentage(2));
    }

    /** Wentzell ex. 18.1, p. 399: 2900 lb, lead 1/3 in., efficiency 33.91 %: 453.68 in·lb, self-locking. */
    @Test
    void squareThreadOfAPress() {
        Drivetrain drivetrain = of(new Screw(
                new Length(INCH / 3),
                new Length(1.354 * INCH),
                new Length(0.0001),
                new Mass(0),
                new Angle(0),
                0.33912,
                null,
                null));
        double torque = torque(drivetrain, 2900 * POUND_FORCE, 0.01, 0, 0);
        assertThat(torque / (POUND_FORCE * INCH)).isCloseTo(453.68, withinPercentage(0.1));
        assertThat(drivetrain.selfLocking()).isTrue();
    }

    /** Gupta & Singhal ex. 3.6, p. 36: 100 t/h over 200 m at 1.2 m/s, motor 1200 1/min, 8 s: 0.4222 kg·m² and 8.2 N·m. */
    @Test
    void conveyor() {
        double speed = 1200 * 2 * Math.PI / 60;
        double mass = 100_000 / 3600.0 * 200 / 1.2;
        Drivetrain drivetrain = of(belt(2 * 1.2 / speed, mass, 0, 1));
        assertThat(drivetrain.reflectedInertia(mass * Math.pow(1.2 / speed, 2)))
                .isCloseTo(0.4222, withinPercentage(0.1));
        assertThat(torque(drivetrain, 0, 1, 1.2 / 8, 0.1)).isCloseTo(8.2, withinPercentage(0.1));
    }

    /**
     * Gupta & Singhal ex. 3.10, p. 39: 100 kg at 10 m/s, 1.2 N/kg, 1.5 N·m, 1440 1/min. Printed torque 9.46 N·m; the printed
     * inertia 5.314 multiplies the weight in newtons, right is 1.43976 kg·m² with the motor's 0.4 + 0.6.
     */
    @Test
    void massTakenForWeight() {
        double speed = 1440 * 2 * Math.PI / 60;
        Drivetrain drivetrain = of(belt(2 * 10 / speed, 100, 0, 1));
        assertThat(0.4 + 0.6 + drivetrain.reflectedInertia(100 * Math.pow(10 / speed, 2)))
                .isCloseTo(1.43976, withinPercentage(0.1));
        assertThat(1.5 + torque(drivetrain, 1.2 * 100, 10, 0, 1)).isCloseTo(9.4578, withinPercentage(0.1));
    }

    /** Khurmi & Gupta, Theory of Machines, ex. 3.4, p. 35: haulage up 1 in 20, printed 154.46 N·m and 22.24 kW. */
    @Test
    void haulage() {
        double drum = 1250 * 0.45 * 0.45;
        double armature = 110 * 0.125 * 0.125;
        Belt rope = new Belt(
                new Length(1),
                new Inertia(drum),
                new Mass(14_000),
                new Angle(Math.asin(1 / 20.0)),
                1,
                null,
                new Friction(0, new Force(1200), null));
        double torque = torque(of(rope, 40, 0.85), 0, 1.8, 0.1, armature);
        assertThat(torque).isCloseTo(154.46, withinPercentage(0.1));
        assertThat(torque * 1.8 / 0.5 * 40).isCloseTo(22_240, withinPercentage(0.1));
    }

    /**
     * Khurmi & Gupta ex. 3.13, p. 50: 75 kg fall on a 0.3 m drum with 100 kg·m², and drive 5 kg·m² six times faster; printed
     * 0.231 m/s², with a gear of 0.9 0.216. A falling load that drives a free shaft: the torque left at it is 0.
     */
    @Test
    void fallingMassSpeedsAFlywheelUp() {
        double ours = 9.80665 / 9.81; // the book's free fall is 9.81 m/s², and all accelerations go with it
        Hoist fall = new Hoist(new Length(0.6), new Inertia(100), new Mass(75), null, 1, 1, null);
        assertThat(torque(of(fall, 6, 1), 0, -1, -0.230924 * ours, 5)).isCloseTo(0, within(1e-3));
        Drivetrain lossy = Drivetrain.of(
                axis("a", fall, new io.axiswright.engine.design.Gear(6, 1, 0.9, new Inertia(0)), ANY, dwell(1)));
        assertThat(torque(lossy, 0, -1, -0.215868 * ours, 5)).isCloseTo(0, within(1e-3));
    }

    /**
     * Khurmi & Gupta ex. 3.17, p. 55: 0.6 and 45 kg·m², 9:1, 0.95, 100 N·m; 1764 W at 160 1/min (1763.70), and 30 N·m give 3.7 s to
     * 60 1/min (3.6603).
     */
    @Test
    void runUp() {
        double steady = torque(of(table(45, 100, 1), 9, 0.95), 0, 1, 0, 0.6);
        assertThat(steady * 9 * 160 * 2 * Math.PI / 60).isCloseTo(1763.70, within(0.01));
        double acceleration = 60 * 2 * Math.PI / 60 / 3.6603;
        assertThat(torque(of(table(45, 100, 1), 9, 0.95), 0, 1, acceleration, 0.6))
                .isCloseTo(30, withinPercentage(0.1));
    }

    /** Dubey ex. 4.2, p. 52: reversals of 10 000 kg·m²; 45 974.87 N·m rms (the printed book differs, the notebook says so). */
    @Test
    void rmsTorqueWithReversals() {
        double swing = 400 * 2 * Math.PI / 60;
        double[][] loads = {
            {10, 25_000}, {1, 0}, {5, 10_000 * swing / 5}, {1, 0}, {15, 20_000}, {1, 0}, {5, 10_000 * swing / 5}, {1, 0}
        };
        List<LoadPiece> pieces = new java.util.ArrayList<>();
        double start = 0;
        LoadEffort none = new EvenEffort(1, 0, 0, 0, 0, 0, 0);
        Polynomial zero = Polynomial.ZERO;
        for (double[] load : loads) {
            pieces.add(LoadPiece.of(start, load[0], zero, zero, zero, Polynomial.of(load[1]), zero, none));
            start += load[0];
        }
        assertThat(start).isEqualTo(39);
        assertThat(LoadSums.of(pieces, start).rmsTorque(0)).isCloseTo(45_974.87, withinPercentage(0.1));
    }

    /** Lift with balance, the formulas of Khurmi & Gupta ch. 3: weights subtract, masses add. */
    @Test
    void counterweightAddsMassAndTakesWeight() {
        Drivetrain drivetrain = of(hoist(0.8, 2, 900, 600, 1));
        double expected = 0.4 * (300 * 9.80665 + 1500 * 0.5) + 2 * 0.5 / 0.4;
        assertThat(torque(drivetrain, 0, 1, 0.5, 0)).isCloseTo(expected, within(1e-9));
    }

    @Test
    void reevingHalvesForceAndDoublesRope() {
        Hoist two = new Hoist(new Length(0.4), new Inertia(0), new Mass(100), null, 2, 1, null);
        assertThat(torque(of(two), 0, 1, 0, 0)).isCloseTo(100 * 9.80665 * 0.2 / 2, within(1e-9));
        AxisLoad lift = AxisLoad.of(axis("a", two, null, ANY, travel(0.5, 1, new Trapezoidal(0.5, 0.5))));
        double turned = lift.pieces().stream()
                .mapToDouble(p -> p.speed().integral(0, p.duration()))
                .sum();
        assertThat(turned).isCloseTo(0.5 * 10, within(1e-9));
    }

    /**
     * Worked by hand: 50 kg hang on a screw, lead 10 mm, eta 0.9 (back 0.8889), drag 100 N, 200 N·s/m; 0.2 m up in 1 s by
     * thirds. Up: a = 0.9 m/s², v = 0.3 m/s; rising F = 490.3325 + 100 + 45 + 200·v; T = F·lead/(2·pi·0.9).
     */
    @Test
    void verticalScrew() {
        double lead = 0.01;
        Screw screw = new Screw(
                new Length(lead),
                new Length(0.02),
                new Length(0.5),
                new Mass(50),
                new Angle(Math.PI / 2),
                0.9,
                null,
                new Friction(0.1, new Force(100), new LinearDamping(200)));
        AxisLoad load = AxisLoad.of(axis(
                "z",
                screw,
                null,
                ANY,
                travel(0.2, 1, new Trapezoidal(1 / 3.0, 1 / 3.0)),
                dwell(0.5),
                travel(-0.2, 1, new Trapezoidal(1 / 3.0, 1 / 3.0))));
        double turn = lead / (2 * Math.PI);
        double screwInertia = Math.PI * 7850 * 0.5 * Math.pow(0.02, 4) / 32;
        double spin = 0.9 / turn * screwInertia;
        Course course = load.course(0);
        double weight = 490.3325;
        assertThat(at(course, 0)).isCloseTo((weight + 100 + 45) * turn / 0.9 + spin, within(1e-9));
        assertThat(at(course, 0.5)).isCloseTo((weight + 100 + 60) * turn / 0.9, within(1e-9));
        assertThat(at(course, 0.7)).isCloseTo((weight + 100 - 45 + 200 * 0.27) * turn / 0.9 - spin, within(1e-9));
        assertThat(at(course, 1.2)).isCloseTo(weight * turn, within(1e-9));
        double back = 2 - 1 / 0.9;
        assertThat(at(course, 1.5)).isCloseTo((weight - 100 - 45) * turn * back - spin, within(0.003));
        assertThat(at(course, 2)).isCloseTo((weight - 100 - 60) * turn * back, within(1e-9));
    }

    /**
     * Worked by hand: 1.2 kg·m², 0.5 N·m and 0.04 N·m·s/rad behind eta 0.9; half a turn in 1 s by thirds: 1.5·pi rad/s,
     * 4.5·pi rad/s². The friction that goes with speed is added at half and at full speed, and taken off while slowing down,
     * where the table drives (2 − 1/0.9).
     */
    @Test
    void viscousFrictionOfATableGoesWithItsSpeed() {
        var table = new RotaryTable(new Inertia(1.2), new Torque(0.5), 0.9, null, null, new RotaryDamping(0.04));
        Course course = AxisLoad.of(axis("t", table, null, ANY, turn(Math.PI, 1, new Trapezoidal(1 / 3.0, 1 / 3.0))))
                .course(0);
        double full = 1.5 * Math.PI;
        double inertial = 1.2 * 4.5 * Math.PI;
        assertThat(at(course, 1 / 6.0)).isCloseTo((inertial + 0.5 + 0.04 * full / 2) / 0.9, within(1e-9));
        assertThat(at(course, 0.5)).isCloseTo((0.5 + 0.04 * full) / 0.9, within(1e-9));
        assertThat(at(course, 5 / 6.0)).isCloseTo((-inertial + 0.5 + 0.04 * full / 2) * (2 - 1 / 0.9), within(1e-9));
    }

    /** The same friction on an unbalanced load; m·g·e·sin(tilt)·cos(angle) by hand, half way at constant speed. */
    @Test
    void viscousFrictionAddsToAnUnbalance() {
        var unbalance = new Unbalance(new Mass(2), new Length(0.1), new Angle(Math.PI / 2), new Angle(0));
        var drive = new DirectDrive(new Inertia(0.3), null, unbalance, new RotaryDamping(0.1));
        Course course = AxisLoad.of(
                        axis("d", drive, null, ANY, turn(Math.PI / 3, 1, new Trapezoidal(1 / 3.0, 1 / 3.0))))
                .course(0);
        double expected = 2 * 9.80665 * 0.1 * Math.cos(Math.PI / 6) + 0.1 * Math.PI / 2;
        assertThat(at(course, 0.5)).isCloseTo(expected, within(1e-9));
    }

    private static double at(Course course, double instant) {
        Course.Piece piece = course.pieces().stream()
                .filter(p -> instant >= p.start() - 1e-12 && instant < p.end())
                .findFirst()
                .orElseThrow();
        return piece.torque().at(instant - piece.start());
    }

    private static Belt belt(double diameter, double mass, double pulleyInertia, double efficiency) {
        return new Belt(
                new Length(diameter), new Inertia(pulleyInertia), new Mass(mass), new Angle(0), efficiency, null, null);
    }
}
