package io.axiswright.engine.duty;

import static io.axiswright.engine.duty.Fixtures.MAINS;
import static io.axiswright.engine.duty.Fixtures.SITE;
import static io.axiswright.engine.duty.Fixtures.ZONE;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Axis;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The choice against an exhaustive one that samples every candidate instant by instant. */
class ChoiceTest {

    private static final int SAMPLES = 4000;

    /** A candidate with the largest share of any limit it uses. */
    record Tried(DriveUnit unit, @Nullable VentilationKit kit, int price, double use, boolean tunable) {}

    @ParameterizedTest
    @ValueSource(longs = {71, 72, 73})
    void winnerIsThatOfAnExhaustiveSearch(long seed) {
        RandomAxes random = new RandomAxes(seed);
        int decided = 0;
        for (int n = 0; n < 25; n++) {
            Axis axis = random.next("seed " + seed + " axis " + n);
            List<DriveUnit> units = new ArrayList<>();
            for (int k = 0; k < 12; k++) {
                double torque = 0.3 * Math.pow(1.7, k) * random.between(0.9, 1.1);
                double top = random.between(200, 900);
                double inertia = 2e-5 * Math.pow(torque, 1.3);
                String frame = "F" + k / 3;
                units.add(Fixtures.unit("u" + k, frame, torque, top, inertia, 40, 100 + random.upTo(900)));
            }
            List<HoldingBrake> brakes = new ArrayList<>();
            List<VentilationKit> kits = new ArrayList<>();
            for (int frame = 0; frame < 4; frame++) {
                brakes.add(Fixtures.brake("b" + frame, "F" + frame, 2 * Math.pow(5, frame), 1e-6, 50));
                brakes.add(Fixtures.brake("c" + frame, "F" + frame, 4 * Math.pow(5, frame), 3e-6, 80));
                kits.add(Fixtures.kit("k" + frame, "F" + frame, 1.4, 40));
            }
            DutyRequest request =
                    new DutyRequest(SITE, MAINS, List.of(axis), List.of(ZONE), units, brakes, kits, List.of());
            AxisDuty duty = new DutySizing().size(request).axes().getFirst();
            List<Tried> tried = exhaustive(axis, units, brakes, kits);
            if (tried.stream().anyMatch(t -> Math.abs(t.use - 1) < 5e-3)) {
                continue; // too close for sampling to tell
            }
            List<Tried> holding = tried.stream().filter(t -> t.use < 1).toList();
            assertThat(duty.feasibleCandidates()).as(axis.id()).isEqualTo(holding.size());
            assertThat(duty.rejectedCandidates()).as(axis.id()).isEqualTo(tried.size() - holding.size());
            assertThat(duty.feasible()).as(axis.id()).isEqualTo(!holding.isEmpty());
            if (!holding.isEmpty()) {
                decided++;
                boolean anyTunable = holding.stream().anyMatch(Tried::tunable);
                List<Tried> ranked =
                        holding.stream().filter(t -> t.tunable || !anyTunable).toList();
                int cheapest = ranked.stream().mapToInt(Tried::price).min().orElseThrow();
                assertThat(ranked.stream().filter(t -> t.price == cheapest).map(t -> t.unit.id()))
                        .as(axis.id())
                        .contains(duty.driveUnit());
                assertThat(duty.candidates().getFirst().driveUnit())
                        .as(axis.id())
                        .isEqualTo(duty.driveUnit());
            }
        }
        assertThat(decided).as("seed " + seed).isGreaterThan(5);
    }

    private static List<Tried> exhaustive(
            Axis axis, List<DriveUnit> units, List<HoldingBrake> brakes, List<VentilationKit> kits) {
        List<Tried> tried = new ArrayList<>();
        for (DriveUnit unit : units) {
            tried.add(attempt(axis, unit, null, brakes));
            if (axis.drive().forcedVentilationAllowed()) {
                for (VentilationKit kit : kits) {
                    if (kit.frameSize().equals(unit.frameSize())) {
                        tried.add(attempt(axis, unit, kit, brakes));
                    }
                }
            }
        }
        return tried;
    }

    private static Tried attempt(Axis axis, DriveUnit unit, @Nullable VentilationKit kit, List<HoldingBrake> brakes) {
        AxisLoad load = AxisLoad.of(axis); // only for holding torque and added inertia, tested elsewhere
        double use = 0;
        double inertia = load.addedInertia() + unit.rotorInertia().si();
        int price = amount(unit.price()) + (kit == null ? 0 : amount(kit.price()));
        if (axis.drive().holdingBrake()) {
            List<HoldingBrake> fitting = brakes.stream()
                    .filter(b -> b.frameSize().equals(unit.frameSize()))
                    .filter(b -> b.torque().si() >= 1.5 * load.holdingTorque())
                    .toList();
            if (fitting.isEmpty()) {
                use = 2;
            } else {
                inertia += fitting.getFirst().inertia().si();
                price += amount(fitting.getFirst().price());
            }
        }
        double factor = kit == null ? 1 : kit.continuousTorqueFactor();
        double torque = unit.continuousCurve().getFirst().torque().si();
        double top = unit.continuousCurve().getLast().speed().si();
        TorqueOracle oracle = new TorqueOracle(axis, inertia);
        double rms = Math.sqrt(oracle.integral(s -> s.torque() * s.torque()) / oracle.period());
        double rmsSpeed = Math.sqrt(oracle.integral(s -> s.speed() * s.speed()) / oracle.period());
        double continuous = rmsSpeed > top ? 0 : factor * torque * (1 - 0.2 * rmsSpeed / top);
        use = Math.max(use, continuous == 0 ? 2 : rms / continuous);
        double low = 0.9 * top;
        double step = oracle.period() / SAMPLES;
        double tau = unit.windingTimeConstant().si();
        double heat = 0;
        for (int round = 0; round < 2; round++) {
            double highest = heat;
            for (int k = 0; k < SAMPLES; k++) {
                TorqueOracle.State state = oracle.at((k + 0.5) * step);
                double speed = Math.abs(state.speed());
                use = Math.max(use, speed / low);
                double available = speed < 0.7 * low
                        ? 3 * torque
                        : torque * (3 - 2.1 * (Math.min(speed, low) - 0.7 * low) / (0.3 * low));
                use = Math.max(use, Math.abs(state.torque()) / available);
                double steady = continuous == 0 ? 0 : state.torque() * state.torque() / continuous / continuous;
                heat = steady + (heat - steady) * Math.exp(-step / tau);
                highest = Math.max(highest, heat);
            }
            if (round == 0) {
                heat = heat / -Math.expm1(-oracle.period() / tau);
            } else {
                use = Math.max(use, highest);
            }
        }
        double ratio = load.reflectedInertia() / (inertia - load.drivetrain().gearInertia());
        return new Tried(unit, kit, price, use, ratio <= unit.inertiaRatioLimit());
    }

    private static int amount(io.axiswright.engine.quantity.@Nullable Money money) {
        return money == null ? 0 : money.amount().intValueExact();
    }
}
