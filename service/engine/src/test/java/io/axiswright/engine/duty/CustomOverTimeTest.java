package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.CustomInstant;
import io.axiswright.engine.design.Ramp;
import io.axiswright.engine.design.Run;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A mechanism whose torque and inertia go with the time of the cycle. */
class CustomOverTimeTest {

    private static final AngularSpeed FAST = new AngularSpeed(10);

    /** 0.2 kg·m² until 1 s, then evenly up to 0.5 kg·m² at 3 s; 4 N·m until 1 s, then evenly down to −2 N·m. */
    private static final Custom ARM =
            new Custom(List.of(instant(1, 4, 0.2), instant(3, -2, 0.5)), new Torque(0.3), new RotaryDamping(0.05));

    private static final Segment[] CYCLE = {
        new Ramp(null, FAST, new Time(1), null, null, null, null, null),
        new Run(FAST, new Time(2), null, null, null),
        new Ramp(FAST, null, new Time(0.5), null, null, null, null, null),
        Fixtures.dwell(0.5)
    };

    private static CustomInstant instant(double time, double torque, double inertia) {
        return new CustomInstant(new Time(time), new Torque(torque), new Inertia(inertia));
    }

    private static Axis axis() {
        return Fixtures.axis("arm", ARM, null, ANY, CYCLE);
    }

    private static double torque(AxisLoad load, double instant) {
        for (Course.Piece piece : load.course(0).pieces()) {
            if (instant <= piece.end()) {
                return piece.torque().at(instant - piece.start());
            }
        }
        throw new IllegalArgumentException("after the cycle");
    }

    /**
     * By hand: at 0.5 s 0.2·10 + 4 + 0.3 + 0.05·5 = 6.55; at 2 s dJ/dt·w = 0.15·10 = 1.5, torque 1, so 1.5 + 1 + 0.3 + 0.5 = 3.3; at
     * 3.25 s 0.5·(−20) − 2 + 0.3 + 0.25 = −11.45; at rest −2.
     */
    @Test
    void torqueByHand() {
        AxisLoad load = AxisLoad.of(axis());
        assertThat(torque(load, 0.5)).isCloseTo(6.55, within(1e-12));
        assertThat(torque(load, 2)).isCloseTo(3.3, within(1e-12));
        assertThat(torque(load, 3.25)).isCloseTo(-11.45, within(1e-12));
        assertThat(torque(load, 3.75)).isCloseTo(-2, within(1e-12));
        assertThat(load.reflectedInertia()).isCloseTo(0.5, within(1e-15));
        assertThat(load.holdingTorque()).isCloseTo(4, within(1e-15));
    }

    /** A cycle in half the time, rest included, has twice the speed and four times what goes with acceleration or dJ/dt·w. */
    @Test
    void theCourseGoesWithItsSegments() {
        AxisLoad load = AxisLoad.of(axis(), CycleChange.slower(0.5));
        assertThat(load.period()).isCloseTo(1.75 + 0.5, within(1e-12));
        // at 1 s: 4·1.5 + 1 + 0.3 + 2·0.5
        assertThat(torque(load, 1)).isCloseTo(8.3, within(1e-12));
        // at 1.625 s: 4·(−10) − 2 + 0.3 + 0.5
        assertThat(torque(load, 1.625)).isCloseTo(-41.2, within(1e-12));
        assertThat(torque(load, 2)).isCloseTo(-2, within(1e-12));
    }

    /** At rest the motor holds a torque that goes from 3 to −3 N·m: rms 3/sqrt(3); a brake has to hold 3. */
    @Test
    void aStandstillHoldsTheCourse() {
        Custom held = new Custom(List.of(instant(0, 3, 1), instant(2, -3, 1)), null, null);
        AxisLoad load = AxisLoad.of(Fixtures.axis("held", held, null, ANY, Fixtures.dwell(2)));
        assertThat(LoadSums.of(load.pieces(), load.period()).rmsTorque(0.1)).isCloseTo(Math.sqrt(3), within(1e-12));
        assertThat(load.holdingTorque()).isEqualTo(3);
    }

    /**
     * A stop keeps what its first instant has. From full speed in 0.2 s at 2 s: −0.35·50 + 1 + 0.3 + 0.05·w, so −15.7 N·m at first and
     * −16.2 at last.
     */
    @Test
    void aStopKeepsTorqueAndInertia() {
        EvenStops stops = new EvenStops(AxisLoad.of(axis()), 0, 0.2);
        Course.Piece stop = stops.from(2, 2).pieces().getFirst();
        assertThat(stop.torque().at(0)).isCloseTo(-15.7, within(1e-12));
        assertThat(stop.torque().at(0.2)).isCloseTo(-16.2, within(1e-12));
    }

    /** The hardest stop begins at 3 s, where inertia is greatest and torque helps least: −0.501·50 − 2 + 0.3 at its end. */
    @Test
    void theHardestStopIsTheWorstOfAllInstants() {
        AxisDuty duty = Fixtures.size(Fixtures.inZone(axis()), Fixtures.unit("u", "F", 9, 40, 1e-3, 60, 1));
        StopModel stops = Objects.requireNonNull(duty.stopModel());
        double most = 0;
        for (int k = 0; k < 4000; k++) {
            double instant = 4 * (k + 0.5) / 4000;
            for (Course.Piece piece : stops.from(instant, instant).pieces()) {
                most = Math.max(most, piece.torque().largestMagnitude(0, piece.duration()));
            }
        }
        AxisLoad load = AxisLoad.of(axis());
        HardestStop hardest = HardestStop.of(load, 10, 1e-3, Fixtures.ZONE, StopMeasure.TORQUE);
        double byHand = 0.501 * 50 + 2 - 0.3;
        assertThat(hardest.size()).isCloseTo(byHand, within(2e-4 * byHand));
        assertThat(hardest.instant()).isCloseTo(3, within(1e-2));
        assertThat(most).isLessThanOrEqualTo(byHand).isCloseTo(byHand, within(1e-2 * byHand));
    }

    /** What a stop and another pace do to the course is said where the course stands. */
    @Test
    void theAnswerSaysWhatAStopKeeps() {
        DutyResult answer = new DutySizing()
                .size(Fixtures.request(List.of(axis()), List.of(Fixtures.unit("u", "F", 9, 40, 1e-3, 60, 1))));
        assertThat(answer.findings())
                .filteredOn(finding -> finding.code() == FindingCode.DUTY_COURSE_OVER_TIME)
                .singleElement()
                .satisfies(finding -> assertThat(finding.pointer()).isEqualTo("/design/axes/0/mechanism/instants"));
    }

    /** Between two instants no stop returns more power than both plus the bend the model states. */
    @Test
    void theBendBoundsWhatLiesBetween() {
        RandomAxes random = new RandomAxes(57);
        for (int n = 0; n < 20; n++) {
            Axis axis = random.nextTimed("axis " + n);
            StopModel stops = new EvenStops(AxisLoad.of(axis), 0.01, 0.1);
            double[] cuts = stops.cuts();
            for (int k = 1; k < cuts.length; k++) {
                bounded(axis.id(), stops, cuts[k - 1], cuts[k]);
            }
        }
    }

    private static void bounded(String id, StopModel stops, double from, double to) {
        double middle = (from + to) / 2;
        PowerBend bend = stops.bend(from, to, 0.01);
        for (int k = 0; k <= 20; k++) {
            double t = stops.duration() * k / 20;
            double ends = Math.max(returned(stops.from(from, middle), t), returned(stops.from(to, middle), t));
            for (int j = 1; j < 20; j++) {
                double instant = from + (to - from) * j / 20;
                double here = returned(stops.from(instant, middle), t);
                assertThat(here).as("%s from %s at %s", id, instant, t).isLessThanOrEqualTo(ends + bend.power() + 1e-9);
            }
        }
    }

    private static double returned(Course stop, double time) {
        for (Course.Piece piece : stop.pieces()) {
            if (time <= piece.end() + 1e-12) {
                double t = Math.min(time - piece.start(), piece.duration());
                Polynomial torque = piece.torque();
                return -torque.at(t) * piece.speed().at(t) - 0.01 * torque.at(t) * torque.at(t);
            }
        }
        return 0;
    }
}
