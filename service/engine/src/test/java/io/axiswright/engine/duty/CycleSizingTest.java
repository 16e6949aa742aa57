package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.ANY;
import static io.axiswright.engine.duty.Fixtures.MAINS;
import static io.axiswright.engine.duty.Fixtures.axis;
import static io.axiswright.engine.duty.Fixtures.table;
import static io.axiswright.engine.duty.Fixtures.turn;
import static io.axiswright.engine.duty.Fixtures.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.AltitudeRule;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.HousingHeat;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Cycloidal;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.ModifiedSine;
import io.axiswright.engine.design.ModifiedTrapezoid;
import io.axiswright.engine.design.MotionLaw;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.Polynomial4567;
import io.axiswright.engine.design.Ramp;
import io.axiswright.engine.design.Run;
import io.axiswright.engine.design.SCurve;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.SimpleHarmonic;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularAcceleration;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.LinearAcceleration;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Unit;
import io.axiswright.engine.quantity.Units;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What cycles, sites and stops do to the choice of a drive unit, and relations any right answer obeys. */
class CycleSizingTest {

    private static final List<MotionLaw> LAWS = List.of(
            new Trapezoidal(0.3, 0.2),
            new Triangular(),
            new SCurve(0.4, 0.5),
            new SimpleHarmonic(),
            new Cycloidal(),
            new Polynomial345(),
            new Polynomial4567(),
            new ModifiedTrapezoid(),
            new ModifiedSine());

    private static List<Finding> findings(Axis axis, DriveUnit... units) {
        return new DutySizing()
                .size(Fixtures.request(List.of(axis), List.of(units)))
                .findings();
    }

    private static Finding the(FindingCode code, List<Finding> findings) {
        return findings.stream().filter(f -> f.code() == code).findFirst().orElseThrow();
    }

    @Test
    void aFeedTheCatalogueDoesNotHaveIsNamed() {
        var onePhase = new DriveWish().feed(Feed.ONE_PHASE).made();
        List<Finding> findings =
                findings(axis("a", table(0.1, 0, 1), null, onePhase, turn(1, 1, new Triangular())), unit("u", 5, 1));
        Finding none = the(FindingCode.DUTY_FEED_NONE, findings);
        assertThat(none.text()).contains("400 V").doesNotContain(" 0 V");
        assertThat(findings).extracting(Finding::code).doesNotContain(FindingCode.DUTY_NO_DRIVE_UNIT);
    }

    @Test
    void aMoveTooShortForItsTopSpeedIsNamed() {
        var move = new Move(
                new Angle(1),
                null,
                new Trapezoidal(null, null),
                new AngularSpeed(9),
                new AngularAcceleration(4),
                null,
                null,
                null,
                null);
        Finding note = the(
                FindingCode.DUTY_TOP_SPEED_UNREACHED,
                findings(axis("a", table(0.1, 0, 1), null, ANY, move), unit("u", 5, 1)));
        assertThat(Objects.requireNonNull(note.value()).si()).isCloseTo(2, within(1e-9));
        assertThat(note.pointer()).isEqualTo("/design/axes/0/cycle/segments/0/topSpeed");
    }

    @Test
    void aPayloadTakenUpInMotionIsNamed() {
        AngularSpeed speed = new AngularSpeed(2);
        var in = new Ramp(null, speed, new Time(1), null, null, null, null, null);
        var out = new Ramp(speed, null, new Time(1), null, null, null, null, null);
        var bare = new Run(speed, new Time(1), null, null, null);
        var loaded = new Run(speed, new Time(1), null, new Inertia(0.1), null);
        assertThat(findings(axis("a", table(0.1, 0, 1), null, ANY, in, bare, out), unit("u", 5, 1)))
                .extracting(Finding::code)
                .doesNotContain(FindingCode.DUTY_PAYLOAD_SWITCHED_MOVING);
        assertThat(findings(axis("a", table(0.1, 0, 1), null, ANY, in, loaded, out), unit("u", 5, 1)))
                .extracting(Finding::code)
                .contains(FindingCode.DUTY_PAYLOAD_SWITCHED_MOVING);
    }

    /** 2 % per 100 m above 1000 m leave 0.6 of the current at 3000 m, less than the winding's sqrt(0.8). */
    @Test
    void electronicsLoseCurrentByTheirOwnRule() {
        DriveUnit unit = unit("u", "F", 5, 400, 1e-4, 60, 1);
        DriveUnit ruled = Fixtures.with(unit, 100, null, new AltitudeRule(new Length(1000), 0.02));
        Axis axis = axis("a", table(0.01, 0, 1), null, ANY, turn(1, 1, new Triangular()));
        double whole = allowed(axis, unit, DutyLimit.CONTINUOUS, 0);
        assertThat(allowed(axis, unit, DutyLimit.CONTINUOUS, 3000)).isCloseTo(whole * Math.sqrt(0.8), within(1e-9));
        assertThat(allowed(axis, ruled, DutyLimit.CONTINUOUS, 3000)).isCloseTo(whole * 0.6, within(1e-9));
        assertThat(allowed(axis, ruled, DutyLimit.INTERMITTENT, 3000))
                .isCloseTo(0.6 * allowed(axis, unit, DutyLimit.INTERMITTENT, 3000), within(1e-9));
        assertThat(allowed(axis, ruled, DutyLimit.CONTINUOUS, 500)).isCloseTo(whole, within(1e-12));
    }

    private static double allowed(Axis axis, DriveUnit unit, DutyLimit limit, double altitude) {
        AxisDuty duty = at(axis, unit, 40, altitude);
        return duty.limits().stream()
                .filter(use -> use.limit() == limit)
                .findFirst()
                .orElseThrow()
                .allowed()
                .si();
    }

    private static AxisDuty at(Axis axis, DriveUnit unit, double celsius, double altitude) {
        var site = new Site(new Temperature(celsius + 273.15), new Temperature(313.15), new Length(altitude));
        var request =
                new DutyRequest(site, MAINS, List.of(axis), List.of(), List.of(unit), List.of(), List.of(), List.of());
        return new DutySizing().size(request).axes().getFirst();
    }

    /** At the limit of the winding the temperature is that of the rating, whatever the site. */
    @Test
    void windingTemperatureAndTimesFromCold() {
        DriveUnit unit = unit("u", "F", 1, 400, 1e-4, 60, 1);
        Axis axis = axis("a", table(0.05, 0, 1), null, ANY, turn(30, 1.5, new Triangular()));
        for (double altitude : new double[] {0, 2500}) {
            UnitFigures figures =
                    Objects.requireNonNull(at(axis, unit, 50, altitude).unit());
            double permitted = 90 * (altitude == 0 ? 1 : 0.85);
            double use = figures.windingRise().si() / permitted;
            assertThat(figures.windingTemperature().si()).isCloseTo(323.15 + use * 90, within(1e-9));
            double torque = at(axis, unit, 50, altitude).figures().peakTorque().si();
            double rated = at(axis, unit, 50, altitude).limits().stream()
                            .filter(l -> l.limit() == DutyLimit.CONTINUOUS)
                            .findFirst()
                            .orElseThrow()
                            .allowed()
                            .si()
                    / Math.sqrt(permitted / 100);
            double steady = 100 * torque * torque / rated / rated;
            assertThat(Objects.requireNonNull(figures.timeAtPeakTorque()).si())
                    .isCloseTo(-60 * Math.log(1 - permitted / steady), within(1e-9));
        }
        UnitFigures easy = Objects.requireNonNull(
                at(axis, unit("v", "F", 9, 400, 1e-4, 60, 1), 40, 0).unit());
        assertThat(easy.timeAtPeakTorque()).isNull();
        assertThat(easy.timeAtRmsTorque()).isNull();
        DriveUnit housed = Fixtures.with(unit, 100, new HousingHeat(0.5, new Time(3000)), null);
        Time longer = Objects.requireNonNull(at(axis, housed, 40, 0).unit()).timeAtPeakTorque();
        Time shorter = Objects.requireNonNull(at(axis, unit, 40, 0).unit()).timeAtPeakTorque();
        assertThat(Objects.requireNonNull(longer).si())
                .isGreaterThan(Objects.requireNonNull(shorter).si());
    }

    /** A stop within the largest intermittent torque may still be beyond it at the speed at which it begins. */
    @Test
    void stopsAreHeldAgainstTheCurveSpeedBySpeed() {
        DriveUnit unit = unit("u", "F", 5, 400, 1e-4, 60, 1);
        Axis axis = Fixtures.inZone(axis(
                "a",
                table(0.006, 0, 1),
                null,
                ANY,
                turn(240, 1, new Trapezoidal(0.25, 0.25)),
                turn(-240, 1, new Trapezoidal(0.25, 0.25))));
        AxisDuty duty = Fixtures.size(axis, unit);
        LimitUse hardest = Objects.requireNonNull(duty.hardestStop());
        double most = 0;
        StopModel stops = Objects.requireNonNull(duty.stopModel());
        for (int start = 0; start < 400; start++) {
            double instant = 2 * (start + 0.5) / 400;
            for (Course.Piece piece : stops.from(instant, instant).pieces()) {
                for (int k = 0; k <= 1000; k++) {
                    double t = piece.duration() * k / 1000;
                    // straight from 15 N·m to 252 rad/s, on to 4.5 N·m at 360 rad/s, at 10 % low line
                    double speed = Math.abs(piece.speed().at(t));
                    double curve = speed <= 252 ? 15 : speed <= 360 ? 15 - 10.5 * (speed - 252) / 108 : 0;
                    most = Math.max(most, Math.min(1000, Math.abs(piece.torque().at(t)) / curve));
                }
            }
        }
        assertThat(hardest.use()).isCloseTo(most, within(1e-6 * most));
        assertThat(hardest.broken()).isTrue();
        assertThat(hardest.value().si()).isLessThan(15);
        assertThat(hardest.allowed().si()).isLessThan(15);
    }

    /** A pure inertia, time stretched by k: speeds fall by k, torques by k², powers by k³, energies by k². */
    @Test
    void stretchedTimeScalesSpeedAndAcceleration() {
        for (MotionLaw law : LAWS) {
            for (double k : new double[] {0.5, 1.7, 12}) {
                DutyFigures one = figures(turn(2, 0.8, law));
                DutyFigures two = figures(turn(2, 0.8 * k, law));
                scaled(law, two.peakSpeed(), one.peakSpeed(), 1 / k);
                scaled(law, two.peakTorque(), one.peakTorque(), 1 / (k * k));
                scaled(law, two.rmsTorque(), one.rmsTorque(), 1 / (k * k));
                scaled(law, two.peakMotoringPower(), one.peakMotoringPower(), 1 / (k * k * k));
                scaled(law, two.motoredEnergy(), one.motoredEnergy(), 1 / (k * k));
                scaled(law, two.cyclePeriod(), one.cyclePeriod(), k);
            }
        }
    }

    private static void scaled(MotionLaw law, Quantity actual, Quantity before, double factor) {
        assertThat(actual.si())
                .as(law.toString())
                .isCloseTo(before.si() * factor, within(1e-10 * before.si() * factor));
    }

    private static DutyFigures figures(Move move) {
        AxisLoad load = AxisLoad.of(axis("a", table(0.3, 0, 1), null, ANY, move));
        return new CourseFigures(load.course(1e-3)).figures(load, LoadSums.of(load.pieces(), load.period()));
    }

    /** The same move in metres and in inches, to the rounding of the conversion. */
    @Test
    void customaryUnitsGiveTheSameAnswer() {
        AxisDuty metric = Fixtures.size(inUnits((q, symbol) -> q), unit("u", "F", 5, 400, 1e-4, 60, 1));
        AxisDuty customary = Fixtures.size(inUnits(CycleSizingTest::converted), unit("u", "F", 5, 400, 1e-4, 60, 1));
        same(metric.figures().peakTorque(), customary.figures().peakTorque());
        same(metric.figures().rmsTorque(), customary.figures().rmsTorque());
        same(metric.figures().peakSpeed(), customary.figures().peakSpeed());
        same(metric.figures().cyclePeriod(), customary.figures().cyclePeriod());
        same(metric.figures().motoredEnergy(), customary.figures().motoredEnergy());
        same(metric.figures().returnedEnergy(), customary.figures().returnedEnergy());
        same(
                Objects.requireNonNull(metric.unit()).windingRise(),
                Objects.requireNonNull(customary.unit()).windingRise());
    }

    private static void same(Quantity one, Quantity other) {
        assertThat(other.si()).isCloseTo(one.si(), within(1e-12 * Math.abs(one.si())));
    }

    private static Quantity converted(Quantity quantity, String symbol) {
        Unit unit = Units.of(quantity.dimension()).stream()
                .filter(u -> u.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
        return quantity.dimension().of(unit.toSi(unit.fromSi(quantity.si())));
    }

    private static Axis inUnits(BiFunction<Quantity, String, Quantity> unit) {
        Screw screw = new Screw(
                (Length) unit.apply(new Length(0.02), "in"),
                (Length) unit.apply(new Length(0.025), "in"),
                (Length) unit.apply(new Length(0.9), "ft"),
                (Mass) unit.apply(new Mass(37), "lb"),
                (Angle) unit.apply(new Angle(0.3), "deg"),
                0.9,
                null,
                null);
        return axis("a", screw, null, ANY, move(unit, 0.31), move(unit, -0.31));
    }

    private static Move move(BiFunction<Quantity, String, Quantity> unit, double distance) {
        @Nullable Force push = (Force) unit.apply(new Force(80), "lbf");
        return new Move(
                (Length) unit.apply(new Length(distance), "in"),
                null,
                new Trapezoidal(null, null),
                (Speed) unit.apply(new Speed(0.7), "ft/min"),
                (LinearAcceleration) unit.apply(new LinearAcceleration(3), "in/s2"),
                (LinearAcceleration) unit.apply(new LinearAcceleration(5), "ft/s2"),
                null,
                (Mass) unit.apply(new Mass(3), "oz"),
                push);
    }
}
