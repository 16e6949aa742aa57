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

/** Finds for every load the connection whose voltage it is made for, and says which loads the mains cannot feed. */
final class FeedCheck {

    private final Rule.Entry window;
    private final MainsLines mains;

    private final Map<SupplyLoad, Connection> fed = new LinkedHashMap<>();
    private final List<SupplyLoad> misfits = new ArrayList<>();
    private final List<SupplyLoad> unfed = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    FeedCheck(CodeBasis basis, MainsLines mains) {
        this.window = Rule.VOLTAGE_WINDOW.under(basis);
        this.mains = mains;
    }

    FeedCheck of(List<SupplyLoad> loads) {
        loads.forEach(this::check);
        return this;
    }

    /** The loads that can be fed, with their connection. */
    Map<SupplyLoad, Connection> fed() {
        return fed;
    }

    /** The loads whose voltage the mains do not have. */
    List<SupplyLoad> misfits() {
        return misfits;
    }

    /** All loads that cannot be fed. */
    List<SupplyLoad> unfed() {
        return unfed;
    }

    List<Finding> findings() {
        return findings;
    }

    private void check(SupplyLoad load) {
        if (load.feed() == Feed.DC_BUS) {
            unfed.add(load);
            findings.add(FindingCode.SUPPLY_DC_FED_LOAD.at(
                    load.id(), load.pointer(), "common practice, no source", load.ratedCurrent(), null));
            return;
        }
        var nearest = nearest(load);
        if (nearest.isEmpty()) {
            unfed.add(load);
            findings.add(FindingCode.SUPPLY_PHASES_MISSING.at(
                    load.id(), load.pointer(), window.clause(), new Ratio(3), new Ratio(1)));
        } else if (!Limits.within(off(mains.voltage(nearest.get()), load), window.value())) {
            unfed.add(load);
            misfits.add(load);
            findings.add(FindingCode.SUPPLY_VOLTAGE_MISFIT.at(
                    load.id(), load.pointer(), window.clause(), mains.voltage(nearest.get()), load.ratedVoltage()));
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
