package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.RectifierInput;
import io.axiswright.engine.design.CommonCoupling;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.energy.BusPower;
import io.axiswright.engine.harmonic.HarmonicRequest;
import io.axiswright.engine.harmonic.Rectifier;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.LoadUse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The rectifiers on the mains, each with its share of what its DC bus takes, and everything else that draws current. */
final class HarmonicParts {

    private record Fed(String axis, DriveUnit unit, BranchCircuit circuit) {}

    private final StudyRun run;
    private final Map<String, DriveUnit> units = new HashMap<>();
    private final Map<String, BranchCircuit> circuits = new HashMap<>();
    private final List<Rectifier> rectifiers = new ArrayList<>();
    private final List<String> unknown = new ArrayList<>();

    private HarmonicParts(StudyRun run) {
        this.run = run;
        for (AxisDuty duty : run.duty().axes()) {
            DriveUnit unit = run.stock().find(DriveUnit.class, duty.driveUnit());
            if (unit != null) {
                units.put(duty.axis(), unit);
            }
        }
        run.supply().circuits().forEach(c -> c.loads().forEach(load -> circuits.put(load, c)));
    }

    static HarmonicRequest request(StudyRun run, CommonCoupling coupling) {
        var parts = new HarmonicParts(run);
        MeanPowers powers = run.meanPowers();
        powers.buses().forEach(bus -> parts.addBus(bus, powers.fromMains(bus)));
        List<String> lines = run.supply().feeder().lines();
        return new HarmonicRequest(
                run.request().design().mains(), coupling, lines, parts.rectifiers, parts.unknown, parts.others(lines));
    }

    /** The rectifiers of a bus share its power, and its capacitors, in proportion to their rated currents. */
    private void addBus(BusPower bus, double watts) {
        List<Fed> fed = bus.axes().stream()
                .filter(axis -> circuits.containsKey(axis) && fromMains(units.get(axis)))
                .map(axis -> new Fed(
                        axis, Objects.requireNonNull(units.get(axis)), Objects.requireNonNull(circuits.get(axis))))
                .toList();
        double all =
                fed.stream().mapToDouble(f -> f.unit().ratedInputCurrent().si()).sum();
        double farads = bus.axes().stream()
                .map(units::get)
                .filter(Objects::nonNull)
                .mapToDouble(u -> u.busCapacitance().si())
                .sum();
        for (Fed one : fed) {
            RectifierInput input = one.unit().rectifier();
            if (input == null) {
                unknown.add(one.axis());
            } else {
                double share = one.unit().ratedInputCurrent().si() / all;
                rectifiers.add(new Rectifier(
                        one.axis(),
                        one.circuit().lines(),
                        one.circuit().voltage(),
                        one.unit().ratedVoltage(),
                        one.unit().ratedInputCurrent(),
                        input,
                        new Capacitance(farads * share),
                        new Power(watts * share)));
            }
        }
    }

    private static boolean fromMains(@Nullable DriveUnit unit) {
        return unit != null && unit.feed() != Feed.DC_BUS;
    }

    private List<Current> others(List<String> lines) {
        var currents = new ThermalCurrents(run.supplyRequest(), run.supply());
        Map<String, Double> amperes = lines.stream().collect(Collectors.toMap(line -> line, line -> 0.0));
        for (BranchCircuit circuit : run.supply().circuits()) {
            if (circuit.use() != LoadUse.DRIVE) {
                double sum = circuit.loads().stream().mapToDouble(currents::of).sum();
                circuit.lines().forEach(line -> amperes.merge(line, sum, Double::sum));
            }
        }
        return lines.stream()
                .map(line -> new Current(Objects.requireNonNull(amperes.get(line))))
                .toList();
    }
}
