package io.axiswright.engine.fault;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.Raceway;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.supply.Connection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The AC distribution as impedances: what current a fault at any place of it draws. */
final class Distribution {

    private static final double COLD_CELSIUS = 20;

    private final SupplyCases supply;
    private final TransformerFaults transformers;
    private final ConductorImpedances cold;
    private final ConductorImpedances hot;

    Distribution(FaultRequest request) {
        supply = SupplyCases.of(request.codeBasis(), request.mains());
        transformers = new TransformerFaults(request.codeBasis(), request.mains());
        // plastic has the least reactance, steel the most
        cold = new ConductorImpedances(request.codeBasis(), COLD_CELSIUS, Raceway.PVC);
        hot = new ConductorImpedances(
                request.codeBasis(), Limits.celsius(request.conductorTemperature()), Raceway.STEEL);
    }

    /** The end of so many metres of a circuit that starts at a place; nothing where it has no conductors. */
    Optional<Reach> along(Reach from, FaultCircuit circuit, double metres) {
        return cold.along(circuit, metres)
                .flatMap(c -> hot.along(circuit, metres).map(h -> from.then(new Reach(c, h))));
    }

    FaultCurrents highest(Reach place, Connection connection) {
        return supply.highest().at(place.cold(), connection);
    }

    FaultCurrents lowest(Reach place, Connection connection) {
        return supply.lowest().at(place.hot(), connection);
    }

    /** The highest earth-fault loop impedance at a place; absent where not known. */
    @Nullable
    Resistance loop(Reach place) {
        double ohms = supply.lowest().loop(place.hot());
        return Double.isNaN(ohms) ? null : new Resistance(ohms);
    }

    /** Lowest voltage to earth that drives a fault. */
    Voltage lowestToEarth() {
        return new Voltage(supply.lowest().lineToNeutral());
    }

    FaultPoint point(FaultPlace place, String id, @Nullable String circuit, Reach reach, Connection connection) {
        Impedance line = supply.highest().line(reach.cold());
        return new FaultPoint(
                place,
                id,
                circuit,
                new Resistance(line.resistance()),
                new Resistance(line.reactance()),
                highest(reach, connection),
                lowest(reach, connection));
    }

    /** The secondary terminals of a transformer at the mains panel. */
    FaultPoint secondary(FaultTransformer transformer, Reach panel) {
        return new FaultPoint(
                FaultPlace.TRANSFORMER_SECONDARY,
                transformer.id(),
                null,
                null,
                null,
                transformers.highest(transformer, supply.highest(), panel.cold()),
                transformers.lowest(transformer, supply.lowest(), panel.hot()));
    }

    List<Derivation> derivations() {
        return supply.derivations();
    }

    List<Source> sources() {
        Set<Source> all = new LinkedHashSet<>(supply.sources());
        all.addAll(cold.sources());
        all.addAll(hot.sources());
        return List.copyOf(all);
    }
}
