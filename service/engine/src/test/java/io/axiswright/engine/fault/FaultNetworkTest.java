package io.axiswright.engine.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.quantity.Current;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.DoubleSupplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.hipparchus.complex.Complex;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Fault currents of random distributions by a second route, and what more copper, more metres or more supply may do to them. */
class FaultNetworkTest {

    private static final int SITES = 300;

    /** IEC 60228:2004 Table 3, class 5, ohm per km at 20 °C. */
    private static final Map<String, Double> CLASS_5 = Map.of(
            "1.5 mm2", 13.3, "2.5 mm2", 7.98, "4 mm2", 4.95, "6 mm2", 3.3, "10 mm2", 1.91, "16 mm2", 1.21, "25 mm2",
            0.78, "35 mm2", 0.554);

    /** IEC 60028 annealed copper, 20 °C to 70 °C. */
    private static final double HOT = 1 + 0.00393 * 50;

    @Test
    void everyFaultAgreesWithTheNetworkSolvedWireByWire() {
        var random = new Random(20260);
        for (int k = 0; k < SITES; k++) {
            var site = RandomSites.of(random);
            var points = site.study().points();
            for (FaultPoint point : points) {
                double feeder = point.place() == FaultPlace.SUPPLY_TERMINALS ? 0 : site.feederMetres();
                double branch = point.place() == FaultPlace.LOAD ? site.branchMetres() : 0;
                // IEC 60909-0 Table 1 at 10 %
                agrees(point.maximum(), network(site, feeder, branch, 1.1, 1, false), site);
                agrees(point.minimum(), network(site, feeder, branch, 0.9, HOT, true), site);
            }
            assertThat(points).hasSize(site.mains().system() == SupplySystem.THREE_PHASE_THREE_WIRE ? 3 : 4);
        }
    }

    private static PhaseNetwork network(
            RandomSites site, double feeder, double branch, double c, double heat, boolean lowest) {
        var mains = site.mains();
        double volts = mains.voltage().si();
        Complex[] lines = switch (mains.system()) {
            case ONE_PHASE_TWO_WIRE -> new Complex[] {new Complex(c * volts)};
            case ONE_PHASE_THREE_WIRE -> new Complex[] {new Complex(c * volts / 2), new Complex(-c * volts / 2)};
            case THREE_PHASE_THREE_WIRE, THREE_PHASE_FOUR_WIRE -> star(c * volts / Math.sqrt(3));
        };
        double fault = lowest
                ? Objects.requireNonNull(mains.minimumFaultCurrent()).si()
                : mains.prospectiveFaultCurrent().si();
        double ratio = Objects.requireNonNull(mains.faultResistanceRatio());
        Complex angle = Complex.I.add(ratio).divide(Complex.I.add(ratio).norm());
        Complex line = angle.multiply(lines[0].norm() / fault);
        Complex loop = lowest
                ? angle.multiply(
                        Objects.requireNonNull(mains.earthFaultLoopImpedance()).si())
                : line;
        Complex first = wire(site.sizes().getFirst(), feeder, heat);
        Complex last = wire(site.sizes().getLast(), branch, heat);
        return new PhaseNetwork(lines, line, Complex.ZERO, loop.subtract(line))
                .add(first, first, first)
                .add(last, last, last);
    }

    private static Complex[] star(double volts) {
        return new Complex[] {
            new Complex(volts),
            Complex.I.multiply(-2 * Math.PI / 3).exp().multiply(volts),
            Complex.I.multiply(2 * Math.PI / 3).exp().multiply(volts)
        };
    }

    /** 0.08 mohm/m of IEC 60364-5-52 Annex G. */
    private static Complex wire(String size, double metres, double heat) {
        return new Complex(Objects.requireNonNull(CLASS_5.get(size)) * heat, 0.08).multiply(metres / 1000);
    }

    private static void agrees(FaultCurrents currents, PhaseNetwork network, RandomSites site) {
        agrees(currents.threePhase(), network::threePhase, site);
        agrees(currents.lineToLine(), network::lineToLine, site);
        agrees(currents.lineToNeutral(), network::lineToNeutral, site);
        agrees(currents.lineToEarth(), network::lineToEarth, site);
    }

    private static void agrees(@Nullable Current current, DoubleSupplier network, RandomSites site) {
        if (current != null) {
            assertThat(current.si())
                    .as(site.toString())
                    .isCloseTo(network.getAsDouble(), Percentage.withPercentage(1e-3));
        }
    }

    @Test
    void longerConductorsNeverRaiseAFault() {
        sites(site -> new RandomSites(site.mains(), site.sizes(), site.feederMetres() + 5, site.branchMetres() + 3))
                .forEach(pair -> neverAbove(pair.getLast(), pair.getFirst()));
    }

    @Test
    void thickerConductorsNeverLowerAFault() {
        sites(site -> new RandomSites(
                        site.mains(),
                        site.sizes().stream().map(FaultNetworkTest::thicker).toList(),
                        site.feederMetres(),
                        site.branchMetres()))
                .forEach(pair -> neverAbove(pair.getFirst(), pair.getLast()));
    }

    @Test
    void aStrongerSupplyNeverLowersAFault() {
        sites(site -> {
                    var mains = site.mains();
                    var stronger = Sites.mains(
                            mains.system(),
                            mains.voltage().si(),
                            mains.prospectiveFaultCurrent().si() * 1.3,
                            Objects.requireNonNull(mains.minimumFaultCurrent()).si() * 1.1,
                            mains.faultResistanceRatio(),
                            mains.earthing(),
                            Objects.requireNonNull(mains.earthFaultLoopImpedance())
                                    .si());
                    return new RandomSites(stronger, site.sizes(), site.feederMetres(), site.branchMetres());
                })
                .forEach(pair -> neverAbove(pair.getFirst(), pair.getLast()));
    }

    /** An angle of the supply's impedance that is not stated never makes the lowest currents higher than any stated one. */
    @Test
    void anUnknownAngleIsTakenAtItsWorst() {
        sites(site -> {
                    var mains = site.mains();
                    var unknown = Sites.mains(
                            mains.system(),
                            mains.voltage().si(),
                            mains.prospectiveFaultCurrent().si(),
                            Objects.requireNonNull(mains.minimumFaultCurrent()).si(),
                            null,
                            mains.earthing(),
                            Objects.requireNonNull(mains.earthFaultLoopImpedance())
                                    .si());
                    return new RandomSites(unknown, site.sizes(), site.feederMetres(), site.branchMetres());
                })
                .forEach(pair -> {
                    for (int k = 0; k < pair.getFirst().size(); k++) {
                        neverAbove(
                                pair.getLast().get(k).minimum(),
                                pair.getFirst().get(k).minimum());
                    }
                });
    }

    private static String thicker(String size) {
        return RandomSites.METRIC.get(Math.min(RandomSites.METRIC.indexOf(size) + 1, RandomSites.METRIC.size() - 1));
    }

    private static Stream<List<List<FaultPoint>>> sites(UnaryOperator<RandomSites> change) {
        var random = new Random(7);
        return Stream.generate(() -> RandomSites.of(random))
                .limit(SITES)
                .map(site -> List.of(
                        site.study().points(), change.apply(site).study().points()));
    }

    private static void neverAbove(List<FaultPoint> lower, List<FaultPoint> higher) {
        assertThat(lower).hasSameSizeAs(higher);
        for (int k = 0; k < lower.size(); k++) {
            neverAbove(lower.get(k).maximum(), higher.get(k).maximum());
            neverAbove(lower.get(k).minimum(), higher.get(k).minimum());
        }
    }

    private static void neverAbove(FaultCurrents lower, FaultCurrents higher) {
        var low = all(lower);
        var high = all(higher);
        assertThat(low).hasSameSizeAs(high);
        for (int k = 0; k < low.size(); k++) {
            assertThat(low.get(k)).isLessThanOrEqualTo(high.get(k) * (1 + 1e-12));
        }
    }

    private static List<Double> all(FaultCurrents currents) {
        var all = new ArrayList<Double>();
        Stream.of(currents.threePhase(), currents.lineToLine(), currents.lineToNeutral(), currents.lineToEarth())
                .filter(Objects::nonNull)
                .forEach(current -> all.add(current.si()));
        return all;
    }

    @Test
    void aBoltedFaultAtTheTerminalsIsWhatTheOperatorStates() {
        var points = new FaultStudy()
                .study(Sites.iec(Sites.stated(0.2), Sites.feeder("10 mm2", 5, null)))
                .points();
        var currents = points.getFirst().maximum();
        assertThat(Objects.requireNonNull(currents.threePhase()).si()).isCloseTo(10_000, within(1e-6));
        assertThat(Objects.requireNonNull(currents.lineToLine()).si())
                .isCloseTo(10_000 * Math.sqrt(3) / 2, within(1e-6));
        assertThat(Objects.requireNonNull(points.getFirst().minimum().threePhase())
                        .si())
                .isCloseTo(6_000, within(1e-6));
    }
}
