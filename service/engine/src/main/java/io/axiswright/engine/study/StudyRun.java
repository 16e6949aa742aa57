package io.axiswright.engine.study;

import io.axiswright.engine.bill.BillMaking;
import io.axiswright.engine.bill.BillRequest;
import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.braking.BrakingResult;
import io.axiswright.engine.braking.BrakingStudy;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.conductor.ConductorResult;
import io.axiswright.engine.containment.ContainmentCheck;
import io.axiswright.engine.containment.ContainmentResult;
import io.axiswright.engine.controlpower.ControlPowerResult;
import io.axiswright.engine.controlpower.ControlPowerSizing;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.DesignCheck;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.duty.DutyRequest;
import io.axiswright.engine.duty.DutyResult;
import io.axiswright.engine.duty.DutySizing;
import io.axiswright.engine.enclosure.EnclosureResult;
import io.axiswright.engine.enclosure.HeatBalance;
import io.axiswright.engine.energy.EnergyBalance;
import io.axiswright.engine.energy.EnergyResult;
import io.axiswright.engine.fault.FaultResult;
import io.axiswright.engine.fault.FaultStudy;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.harmonic.HarmonicResult;
import io.axiswright.engine.harmonic.HarmonicStudy;
import io.axiswright.engine.memory.Memory;
import io.axiswright.engine.motion.CycleCheck;
import io.axiswright.engine.mounting.MountingCheck;
import io.axiswright.engine.mounting.MountingResult;
import io.axiswright.engine.stopping.StoppingResult;
import io.axiswright.engine.stopping.StoppingStudy;
import io.axiswright.engine.supply.SupplyRequest;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.supply.SupplySizing;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.LayoutMethod;
import io.axiswright.engine.topology.TopologyResult;
import io.axiswright.engine.wiring.WiringChoice;
import io.axiswright.engine.wiring.WiringResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** One study: each discipline is worked out once, when it or something after it is asked for. */
final class StudyRun {

    private final StudyRequest request;
    private final Stock stock;
    private final Memory memory;
    private final Once<DutyResult> duty = new Once<>(this::sizeDuty);
    private final Once<TopologyResult> topology;
    private final Once<ControlPowerResult> controlPower = new Once<>(this::sizeControlPower);
    private final Once<BrakingResult> braking = new Once<>(this::studyBraking);
    private final Once<StoppingResult> stopping = new Once<>(this::studyStopping);
    private final Once<SupplyRequest> supplyRequest = new Once<>(this::askSupply);
    private final Once<SupplyResult> supply = new Once<>(this::sizeSupply);
    private final Once<CircuitConductoring> conductoring = new Once<>(this::sizeConductors);
    private final Once<ContainmentResult> containment = new Once<>(this::checkContainment);
    private final Once<EnclosureResult> enclosures = new Once<>(this::balanceHeat);
    private final Once<MeanPowers> meanPowers = new Once<>(() -> new MeanPowers(this));
    private final Once<HarmonicResult> harmonics = new Once<>(this::studyHarmonics);
    private final Once<EnergyResult> energy = new Once<>(this::balanceEnergy);
    private final Once<FaultResult> faults = new Once<>(this::studyFaults);
    private final Once<MountingResult> mounting = new Once<>(this::checkMounting);
    private final Once<WiringResult> wiring = new Once<>(this::chooseWiring);
    private final Once<List<Finding>> findingsBeforeBill = new Once<>(() -> Assembly.findingsBeforeBill(this));
    private final Once<BillResult> bill = new Once<>(this::makeBill);

    /** A value worked out the first time it is asked for. */
    private static final class Once<T> {
        private final Supplier<T> source;
        private @Nullable T value;

        Once(Supplier<T> source) {
            this.source = source;
        }

        T get() {
            T known = value;
            if (known == null) {
                known = source.get();
                value = known;
            }
            return known;
        }
    }

    StudyRun(StudyRequest request, LayoutEffort effort, SystemStudy.Planner planner, Memory memory) {
        this.request = request;
        this.memory = memory;
        this.stock = new Stock(request.catalogue());
        this.topology = new Once<>(
                () -> memory.recall(TopologyResult.class, NetworkParts.request(request, effort), planner::plan));
    }

    /** Refuses a design that contradicts itself, which must not get as far as a study. */
    static void check(Design design) {
        List<Fault> faults = new ArrayList<>(DesignCheck.faults(design, "/design"));
        faults.addAll(CycleCheck.faults(design, "/design"));
        if (!faults.isEmpty()) {
            throw new InvalidDesign(faults);
        }
    }

    private Design design() {
        return request.design();
    }

    private Catalogue catalogue() {
        return request.catalogue();
    }

    private DutyResult sizeDuty() {
        return new DutySizing(memory)
                .size(new DutyRequest(
                        design().site(),
                        design().mains(),
                        design().axes(),
                        design().stopZones(),
                        catalogue().driveUnits(),
                        catalogue().holdingBrakes(),
                        catalogue().ventilationKits(),
                        catalogue().gearStock(),
                        throughTransformer()));
    }

    private Set<String> throughTransformer() {
        Installation installation = design().installation();
        return installation == null || installation.transformers() == null
                ? Set.of()
                : Set.copyOf(installation.transformers().axes());
    }

    private ControlPowerResult sizeControlPower() {
        return memory.recall(
                ControlPowerResult.class,
                ControlPowerParts.request(request, stock, duty(), topology()),
                new ControlPowerSizing()::size);
    }

    private BrakingResult studyBraking() {
        return memory.recall(
                BrakingResult.class, BrakingParts.request(request, stock, duty()), new BrakingStudy(memory)::study);
    }

    /** Braking by itself, with what takes too long for every study. */
    BrakingResult brakingAlone() {
        return new BrakingStudy(memory)
                .study(BrakingParts.request(request, stock, duty()).withUnaidedStops());
    }

    private StoppingResult studyStopping() {
        return memory.recall(
                StoppingResult.class, StoppingParts.request(design(), stock, duty()), new StoppingStudy(memory)::study);
    }

    private SupplyRequest askSupply() {
        return SupplyParts.request(request, stock, duty(), controlPower());
    }

    private SupplyResult sizeSupply() {
        return memory.recall(SupplyResult.class, supplyRequest(), new SupplySizing()::size);
    }

    private CircuitConductoring sizeConductors() {
        return CircuitConductoring.of(request, stock, supplyRequest(), supply());
    }

    private ContainmentResult checkContainment() {
        var routing = new CableRouting(request, supplyRequest(), supply());
        return new ContainmentCheck().check(routing.request(conductoring().cables(), stock));
    }

    private EnclosureResult balanceHeat() {
        return new HeatBalance().balance(EnclosureParts.request(this));
    }

    private EnergyResult balanceEnergy() {
        return new EnergyBalance().balance(EnergyParts.request(this, Objects.requireNonNull(design().operation())));
    }

    private HarmonicResult studyHarmonics() {
        return new HarmonicStudy()
                .study(HarmonicParts.request(this, Objects.requireNonNull(design().commonCoupling())));
    }

    private FaultResult studyFaults() {
        return new FaultStudy()
                .study(new FaultParts(request, stock, supplyRequest(), conductoring()).request(supply()));
    }

    private MountingResult checkMounting() {
        return memory.recall(
                MountingResult.class, MountingParts.request(request, stock, duty()), new MountingCheck()::check);
    }

    private WiringResult chooseWiring() {
        return memory.recall(WiringResult.class, WiringParts.request(this), new WiringChoice()::choose);
    }

    private BillResult makeBill() {
        var asked = new BillRequest(
                catalogue(),
                request.catalogueSource(),
                new DemandCollection(this).demands(),
                AskerParts.of(this),
                topology().method() == LayoutMethod.NONE,
                topology().unconnectedList(),
                design().spareRules(),
                design().marginRules(),
                ConnectionParts.of(this),
                wiring());
        return memory.recall(BillResult.class, asked, new BillMaking()::make)
                .after(BillWarnings.of(findingsBeforeBill()));
    }

    StudyRequest request() {
        return request;
    }

    Stock stock() {
        return stock;
    }

    DutyResult duty() {
        return duty.get();
    }

    TopologyResult topology() {
        return topology.get();
    }

    ControlPowerResult controlPower() {
        return controlPower.get();
    }

    BrakingResult braking() {
        return braking.get();
    }

    StoppingResult stopping() {
        return stopping.get();
    }

    SupplyRequest supplyRequest() {
        return supplyRequest.get();
    }

    SupplyResult supply() {
        return supply.get();
    }

    ConductorResult conductors() {
        return conductoring.get().result();
    }

    CircuitConductoring conductoring() {
        return conductoring.get();
    }

    ContainmentResult containment() {
        return containment.get();
    }

    EnclosureResult enclosures() {
        return enclosures.get();
    }

    /** The energy of a year; none where the design does not say how much the machine runs. */
    @Nullable
    EnergyResult energy() {
        return design().operation() == null ? null : energy.get();
    }

    MeanPowers meanPowers() {
        return meanPowers.get();
    }

    /** Harmonic currents; none where the design does not say where they are held against limits. */
    @Nullable
    HarmonicResult harmonics() {
        return design().commonCoupling() == null ? null : harmonics.get();
    }

    FaultResult faults() {
        return faults.get();
    }

    MountingResult mounting() {
        return mounting.get();
    }

    WiringResult wiring() {
        return wiring.get();
    }

    /** The findings of everything but the bill. */
    List<Finding> findingsBeforeBill() {
        return findingsBeforeBill.get();
    }

    BillResult billOfMaterials() {
        return bill.get();
    }

    StudyResult system() {
        return Assembly.of(this);
    }
}
