package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.conductor.Circuit;
import io.axiswright.engine.conductor.CircuitKind;
import io.axiswright.engine.conductor.LoadKind;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.JouleIntegral;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.CircuitUse;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.Connection;
import io.axiswright.engine.supply.Feeder;
import io.axiswright.engine.supply.LoadUse;
import io.axiswright.engine.supply.TransformerNeed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The circuits of the AC supply as the conductor discipline sees them. */
final class CircuitParts {

    /** What the feeder may use of the whole voltage drop; common practice, no source. */
    private static final double FEEDER_SHARE = 0.4;

    /** Drives draw harmonics, not reactive power; on conductors this thin the resistance decides and 1 is the worst. */
    private static final double POWER_FACTOR = 1;

    private final StudyRequest request;
    private final Stock stock;
    private final Installation installation;
    private final CableRouting routing;
    private final TerminalEnds ends;

    CircuitParts(StudyRequest request, Stock stock, CableRouting routing, TerminalEnds ends) {
        this.request = request;
        this.stock = stock;
        this.installation = Needed.installation(request.design());
        this.routing = routing;
        this.ends = ends;
    }

    /**
     * The conductors between a transformer and the panel behind it. They have no device ahead of them, so they must carry what the
     * one at their end lets pass, whatever the loads draw: the next size up is not for them (NFPA 70 240.21(C), from memory).
     */
    Circuit secondary(TransformerNeed transformer, Feeder feeder) {
        Current device = feeder.deviceRating();
        double amperes = Math.max(feeder.designCurrent().si(), device == null ? 0 : device.si());
        return circuit(
                Feeder.behind(transformer.id()),
                feeder.lines().size() == 3 ? CircuitKind.AC_THREE_PHASE : CircuitKind.AC_ONE_PHASE,
                LoadKind.GENERAL,
                new Current(amperes),
                null,
                feeder.leakageCurrent(),
                feeder.voltage(),
                feeder.length(),
                installation.voltageDropLimit(),
                feeder.device(),
                feeder.deviceRating(),
                transformer.faultCurrent(),
                null,
                List.of());
    }

    Circuit feeder(Feeder feeder) {
        // its design current already holds the code's additions for several loads
        return circuit(
                Feeder.ID,
                feeder.lines().size() == 3 ? CircuitKind.AC_THREE_PHASE : CircuitKind.AC_ONE_PHASE,
                LoadKind.GENERAL,
                feeder.designCurrent(),
                null,
                feeder.leakageCurrent(),
                feeder.voltage(),
                feeder.length(),
                installation.voltageDropLimit() * FEEDER_SHARE,
                feeder.device(),
                feeder.deviceRating(),
                faultCurrent(),
                FeederNeutral.thirdHarmonic(request.codeBasis(), feeder),
                List.of());
    }

    /**
     * A branch circuit.
     *
     * @param used share of the voltage that is lost ahead of it
     * @param transformer behind which it starts; null if it starts at the mains panel
     */
    Circuit branch(BranchCircuit circuit, double used, @Nullable TransformerNeed transformer) {
        return circuit(
                circuit.id(),
                circuit.connection() == Connection.THREE_PHASE ? CircuitKind.AC_THREE_PHASE : CircuitKind.AC_ONE_PHASE,
                kind(circuit.use()),
                circuit.current(),
                kind(circuit.use()) == LoadKind.MOTOR_OR_DRIVE ? circuit.largestLoad() : null,
                circuit.leakageCurrent(),
                circuit.voltage(),
                circuit.longestRoute(),
                Math.max(installation.voltageDropLimit() - used, 1e-6),
                circuit.device(),
                circuit.deviceRating(),
                transformer == null ? faultCurrent() : transformer.faultCurrent(),
                null,
                circuit.loads());
    }

    private static LoadKind kind(LoadUse use) {
        return switch (use) {
            case DRIVE, VENTILATION -> LoadKind.MOTOR_OR_DRIVE;
            // 240.4(G) does not release the primary of a transformer from protection of its conductors
            case CONTROL_SUPPLY, TRANSFORMER -> LoadKind.GENERAL_CONTINUOUS;
        };
    }

    private Circuit circuit(
            String id,
            CircuitKind kind,
            LoadKind loadKind,
            Current current,
            @Nullable Current largestLoad,
            Current leakage,
            Voltage voltage,
            Length length,
            double dropLimit,
            @Nullable String device,
            @Nullable Current deviceRating,
            Current fault,
            @Nullable Double thirdHarmonic,
            List<String> fed) {
        Time clearing = clearingTime(device, fault);
        return new Circuit(
                id,
                kind,
                CircuitUse.POWER,
                loadKind,
                current,
                voltage,
                length,
                POWER_FACTOR,
                installation.method(),
                installation.insulation(),
                id.equals(Feeder.ID) ? installation.ofFeeder() : installation.material(),
                installation.ambient(),
                routing.groupedCircuits(id, installation.groupedCircuits()),
                installation.terminationRating(),
                dropLimit,
                installation.device(),
                deviceRating,
                clearing == null ? null : fault,
                clearing,
                null,
                null,
                largestLoad,
                null,
                leakage,
                thirdHarmonic,
                null,
                ends.smallest(device, fed),
                routing.conductorsTogether(id),
                routing.moving(id),
                marked(device));
    }

    private @Nullable Boolean marked(@Nullable String device) {
        ProtectiveDevice item = stock.find(ProtectiveDevice.class, device);
        return item == null ? null : item.aluminiumTerminals();
    }

    /** That of the supply terminals: what flows behind the conductors is not known before they are, and less. */
    private Current faultCurrent() {
        return request.design().mains().prospectiveFaultCurrent();
    }

    /** How long the fault current would have to flow for the I²t the device lets through; absent where that is not known. */
    private @Nullable Time clearingTime(@Nullable String device, Current fault) {
        ProtectiveDevice item = stock.find(ProtectiveDevice.class, device);
        JouleIntegral through = item == null ? null : item.letThrough(fault);
        double amperes = fault.si();
        return through == null ? null : new Time(through.si() / (amperes * amperes));
    }
}
