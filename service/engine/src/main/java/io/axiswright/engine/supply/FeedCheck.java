package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.Limits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Finds for every load the connection whose voltage it is made for, and says which loads the mains cannot feed. */
final class FeedCheck {

    private final Rule.Entry window;
    private final MainsLines mains;

    private final Map<SupplyLoad, Connection> fed = new LinkedHashMap<>();
    private final List<SupplyLoad> busFed = new ArrayList<>();
    private final Set<String> throughTransformer;
    private final List<SupplyLoad> wished = new ArrayList<>();
    private final List<SupplyLoad> misfits = new ArrayList<>();
    private final List<SupplyLoad> phaseless = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    FeedCheck(CodeBasis basis, MainsLines mains, Set<String> throughTransformer) {
        this.throughTransformer = throughTransformer;
        this.window = Rule.VOLTAGE_WINDOW.under(basis);
        this.mains = mains;
    }

    FeedCheck of(List<SupplyLoad> loads) {
        loads.forEach(this::check);
        if (!phaseless.isEmpty()) {
            findings.add(FindingCode.SUPPLY_PHASES_MISSING.at(
                    SupplyLoad.named(phaseless),
                    phaseless.getFirst().pointer(),
                    window.clause(),
                    new Ratio(3),
                    new Ratio(1)));
        }
        for (var secondary : Secondary.of(misfits, window.value())) {
            var first = secondary.loads().getFirst();
            findings.add(FindingCode.SUPPLY_VOLTAGE_MISFIT.at(
                    SupplyLoad.named(secondary.loads()),
                    first.pointer(),
                    window.clause(),
                    mains.voltage(nearest(first).orElseThrow()),
                    secondary.voltage()));
        }
        return this;
    }

    /** The loads that can be fed, with their connection. */
    Map<SupplyLoad, Connection> fed() {
        return fed;
    }

    /** The loads that ask for a transformer: by decision, or because the mains do not have their voltage. */
    List<SupplyLoad> behindTransformers() {
        return Stream.concat(wished.stream(), misfits.stream()).toList();
    }

    /** The loads that need three phases of mains that have one. */
    List<SupplyLoad> phaseless() {
        return phaseless;
    }

    /** The loads that no mains feed but a DC bus. */
    List<SupplyLoad> busFed() {
        return busFed;
    }

    List<Finding> findings() {
        return findings;
    }

    private void check(SupplyLoad load) {
        if (load.feed() == Feed.DC_BUS) {
            busFed.add(load);
            return;
        }
        var nearest = nearest(load);
        if (nearest.isEmpty()) {
            phaseless.add(load);
        } else if (throughTransformer.contains(load.id())) {
            wished.add(load);
        } else if (!Limits.within(off(mains.voltage(nearest.get()), load), window.value())) {
            misfits.add(load);
        } else {
            fed.put(load, nearest.get());
        }
    }

    private Optional<Connection> nearest(SupplyLoad load) {
        return mains.voltages().keySet().stream()
                .filter(c -> (c == Connection.THREE_PHASE) == (load.feed() == Feed.THREE_PHASE))
                .min(Comparator.comparingDouble(c -> off(mains.voltage(c), load)));
    }

    /** How far a voltage lies from a load's rated one, as a share of it. */
    private static double off(Voltage voltage, SupplyLoad load) {
        return Math.abs(voltage.si() / load.ratedVoltage().si() - 1);
    }
}
