package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.DeviceRatings;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.NecCorrection;
import io.axiswright.engine.standard.Raceway;
import io.axiswright.engine.standard.SmallestSizes;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * North American practice, in the order a practitioner works: terminals first and uncorrected, then insulation corrected,
 * small-conductor rule, device, voltage drop, fault.
 */
final class NecJudge implements Judge {

    private final Circuit circuit;
    private final List<NecSize> sizes;
    private final NecLoad load;
    private final Insulation terminal;
    private final Sourced<Ratio> ambient;
    private final Sourced<Ratio> together;
    private final Device device;
    private final Sourced<ConductorSize> smallest;
    private final double smallestArea;
    private final Raceway raceway;
    private final int parallel;

    private NecJudge(
            Circuit circuit,
            int parallel,
            NecLoad load,
            Device device,
            Sourced<Ratio> ambient,
            Sourced<Ratio> together) {
        this.circuit = circuit;
        this.parallel = parallel;
        this.load = load;
        this.device = device;
        this.ambient = ambient;
        this.together = together;
        terminal = Columns.terminal(circuit.terminationRating(), circuit.insulation());
        sizes = NecSize.of(circuit.material());
        smallest = smallest(circuit, parallel);
        smallestArea = smallest.value().area().si();
        raceway = Objects.requireNonNullElse(circuit.raceway(), Raceway.STEEL);
    }

    /** How sizes are judged for the circuit with so many conductors in parallel, or where the tables end. */
    static Outlook of(Circuit circuit, int parallel) {
        NecLoad load = NecLoad.of(circuit);
        var ambient = NecCorrection.ambient(circuit.insulation(), circuit.ambient());
        var together = NecCorrection.together(NeutralLoading.necTogether(circuit, parallel));
        var device = load.device();
        if (ambient.isEmpty() || together.isEmpty()) {
            return new Gap(
                    "ambient",
                    circuit.ambient(),
                    NecCorrection.highestAmbient(circuit.insulation()).orElse(null),
                    Limit.AMPACITY,
                    "NFPA 70:2023 Table 310.15(B)(1)(1)");
        }
        if (device.isEmpty()) {
            return new Gap(
                    "designCurrent",
                    load.range().wanted(),
                    DeviceRatings.of(CodeBasis.NFPA_79, circuit.device())
                            .getLast()
                            .value(),
                    Limit.DEVICE_COORDINATION,
                    "NFPA 70:2023 240.6(A)");
        }
        return new NecJudge(circuit, parallel, load, device.get(), ambient.get(), together.get());
    }

    private static Sourced<ConductorSize> smallest(Circuit circuit, int parallel) {
        if (parallel > 1) {
            return SmallestSizes.northAmericanInParallel();
        }
        return switch (circuit.material()) {
            case COPPER -> SmallestSizes.northAmerican(circuit.use());
            case ALUMINIUM -> SmallestSizes.aluminium(CodeBasis.NFPA_79);
        };
    }

    @Override
    public int count() {
        return sizes.size();
    }

    @Override
    public ConductorSize size(int k) {
        return sizes.get(k).size();
    }

    @Override
    public double area(int k) {
        return sizes.get(k).area();
    }

    @Override
    public Device device() {
        return device;
    }

    @Override
    public NecLoad severalLoads() {
        return load;
    }

    @Override
    public int parallel() {
        return parallel;
    }

    @Override
    public Ampacity ampacity(int k) {
        return new Ampacity(column(sizes.get(k), circuit.insulation()), ambient, together, null, parallel);
    }

    @Override
    public Impedance impedance(int k) {
        NecSize size = sizes.get(k);
        Impedance one = circuit.kind() == CircuitKind.DC
                ? size.direct()
                : Objects.requireNonNull(size.alternating().get(raceway));
        return one.inParallel(parallel);
    }

    @Override
    public @Nullable Breach breach(int k) {
        NecSize size = sizes.get(k);
        if (!Limits.within(smallestArea, size.area())) {
            return new Breach(Limit.CODE_MINIMUM, new Area(size.area()), new Area(smallestArea), smallest.clause());
        }
        Current atTerminals =
                new Current(parallel * column(size, terminal).value().si());
        if (!Limits.within(load.terminalDemand().si(), atTerminals.si())) {
            return new Breach(Limit.TERMINATION, load.terminalDemand(), atTerminals, "NFPA 70:2023 110.14(C)");
        }
        Current corrected = ampacity(k).corrected();
        if (!Limits.within(load.correctedDemand().si(), corrected.si())) {
            return new Breach(Limit.AMPACITY, load.correctedDemand(), corrected, load.clause());
        }
        double usable = Math.min(corrected.si(), atTerminals.si());
        Breach breach = NecProtection.breach(load, device, size, new Current(usable));
        if (breach == null) {
            breach = drop(k);
        }
        if (breach == null) {
            breach = FaultWithstand.breach(circuit, size.area());
        }
        return breach == null ? TerminalFit.breach(circuit, size.area()) : breach;
    }

    private @Nullable Breach drop(int k) {
        return Drops.breach(circuit, impedance(k), "NFPA 70:2023 210.19 informational note");
    }

    /** By the device, raised in the ratio of circular mils where the conductor is larger than its current needs. */
    @Override
    public Optional<Sourced<ConductorSize>> protectiveConductor(int chosen, Needed needed) {
        return NecProtective.of(circuit.material(), device.rating(), sizes.get(chosen), parallel, needed)
                .map(size -> ProtectiveReinforcement.of(circuit, CodeBasis.NFPA_79, size));
    }

    @Override
    public List<Source> rules(int k) {
        var rules = new ArrayList<Source>();
        rules.add(smallest.source());
        var maxDevice = sizes.get(k).maxDevice();
        if (maxDevice != null && !load.motor()) {
            rules.add(maxDevice.source());
        }
        load.rule().ifPresent(rules::add);
        return rules;
    }

    private static Sourced<Current> column(NecSize size, Insulation column) {
        return Objects.requireNonNull(size.ampacity().get(column), () -> size.size() + " in column " + column);
    }
}
