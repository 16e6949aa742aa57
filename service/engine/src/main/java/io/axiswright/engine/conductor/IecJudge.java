package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.standard.ConductorClass;
import io.axiswright.engine.standard.ConventionalCurrents;
import io.axiswright.engine.standard.IecConductors;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.SmallestSizes;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** IEC practice: Ib ≤ In ≤ Iz, I2 ≤ 1.45 Iz, terminals, voltage drop, fault. */
final class IecJudge implements Judge {

    /** IEC 60364-4-43 433.1. */
    private static final double TRIPPING_MARGIN = 1.45;

    private static final String COORDINATION = "IEC 60364-4-43 433.1";
    private final Circuit circuit;
    private final List<IecSize> sizes;
    private final IecConditions conditions;
    private final Device device;
    private final Sourced<Ratio> tripping;
    private final Sourced<ConductorSize> smallest;
    private final double smallestArea;
    private final ConductorClass construction;
    private final int parallel;
    private final double neutral;

    private IecJudge(Circuit circuit, int parallel, IecConditions conditions, Device device, Sourced<Ratio> tripping) {
        this.circuit = circuit;
        this.parallel = parallel;
        this.conditions = conditions;
        this.device = device;
        this.tripping = tripping;
        sizes = IecSize.of(circuit);
        construction = Objects.requireNonNullElse(circuit.conductorClass(), ConductorClass.CLASS_5);
        smallest = switch (circuit.material()) {
            case COPPER -> SmallestSizes.iec(circuit.use(), circuit.method(), construction);
            case ALUMINIUM -> SmallestSizes.aluminium(CodeBasis.IEC_60204_1);
        };
        smallestArea = smallest.value().area().si();
        neutral = NeutralLoading.iecMultiple(circuit);
    }

    /** How sizes are judged for the circuit with so many conductors in parallel, or where the tables end. */
    static Outlook of(Circuit circuit, int parallel) {
        var ambient = IecConditions.ambient(circuit);
        if (ambient.isEmpty()) {
            return IecConditions.ambientGap(circuit);
        }
        var together = IecConditions.together(circuit, parallel);
        if (together.isEmpty()) {
            return IecConditions.togetherGap(circuit);
        }
        Current load = circuit.designCurrent();
        var device = Device.of(circuit, CodeBasis.IEC_60204_1, DeviceRange.above(load));
        var tripping = device.flatMap(d -> ConventionalCurrents.multiple(circuit.device(), d.rating()));
        if (device.isEmpty() || tripping.isEmpty()) {
            return IecConditions.deviceGap(circuit);
        }
        return new IecJudge(
                circuit, parallel, new IecConditions(ambient.get(), together.get()), device.get(), tripping.get());
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
    public @Nullable NecLoad severalLoads() {
        return null;
    }

    @Override
    public int parallel() {
        return parallel;
    }

    @Override
    public Ampacity ampacity(int k) {
        return new Ampacity(
                sizes.get(k).ampacity(),
                conditions.ambient(),
                conditions.together(),
                NeutralLoading.factor(circuit),
                parallel);
    }

    @Override
    public Impedance impedance(int k) {
        return Objects.requireNonNull(sizes.get(k).impedance().get(construction))
                .inParallel(parallel);
    }

    @Override
    public @Nullable Breach breach(int k) {
        IecSize size = sizes.get(k);
        if (!Limits.within(smallestArea, size.area())) {
            return new Breach(Limit.CODE_MINIMUM, new Area(size.area()), new Area(smallestArea), smallest.clause());
        }
        Current corrected = ampacity(k).corrected();
        Current load = new Current(neutral * circuit.designCurrent().si());
        if (!Limits.within(load.si(), corrected.si())) {
            return new Breach(Limit.AMPACITY, load, corrected, COORDINATION);
        }
        Breach breach = termination(load.si() / corrected.si());
        if (breach == null) {
            breach = coordination(corrected);
        }
        if (breach == null) {
            breach = Drops.breach(circuit, impedance(k), "IEC 60204-1:2016 12.5");
        }
        if (breach == null) {
            breach = FaultWithstand.breach(circuit, size.area());
        }
        return breach == null ? TerminalFit.breach(circuit, size.area()) : breach;
    }

    /**
     * A conductor may not run hotter at its load than its terminals stand. Heat goes with I², so it runs at
     * θa + (θmax − θa)·(Ib/Iz)².
     */
    private @Nullable Breach termination(double share) {
        double marking = circuit.terminationRating().si();
        double ambient = circuit.ambient().si();
        double hottest = Columns.kelvin(circuit.insulation());
        double running = ambient + (hottest - ambient) * share * share;
        return Limits.within(running, marking)
                ? null
                : new Breach(
                        Limit.TERMINATION,
                        new Temperature(running),
                        circuit.terminationRating(),
                        "IEC 60364-5-52 523.1, temperature derived from heat with the square of the current");
    }

    private @Nullable Breach coordination(Current corrected) {
        Current rating = new Current(neutral * device.rating().si());
        if (!Limits.within(rating.si(), corrected.si())) {
            return new Breach(Limit.DEVICE_COORDINATION, rating, corrected, COORDINATION);
        }
        Current trip = new Current(tripping.value().si() * rating.si());
        Current most = new Current(TRIPPING_MARGIN * corrected.si());
        return Limits.within(trip.si(), most.si())
                ? null
                : new Breach(Limit.DEVICE_COORDINATION, trip, most, COORDINATION);
    }

    @Override
    public Optional<Sourced<ConductorSize>> protectiveConductor(int chosen, Needed needed) {
        return sizes.get(chosen)
                .protective()
                .map(size -> ProtectiveReinforcement.of(circuit, CodeBasis.IEC_60204_1, size));
    }

    @Override
    public List<Source> rules(int k) {
        return circuit.kind() == CircuitKind.DC
                ? List.of(smallest.source(), tripping.source())
                : List.of(
                        smallest.source(),
                        tripping.source(),
                        IecConductors.reactance().source());
    }
}
