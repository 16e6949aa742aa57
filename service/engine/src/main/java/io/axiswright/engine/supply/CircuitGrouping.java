package io.axiswright.engine.supply;

import io.axiswright.engine.graph.NaturalOrder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Puts loads together on branch circuits: the largest first, each on the first circuit of its kind that may take it, else
 * on one of its own. A circuit may take a load if no load on it sees more company than it allows, and a protective device
 * exists that carries them all and that all allow; where devices hold when circuit and load are switched on apart, one must hold
 * when they are switched on together.
 *
 * @param currents the code's design currents
 * @param stock the protective devices
 * @param mains what the mains offer
 */
record CircuitGrouping(DesignCurrents currents, DeviceStock stock, MainsLines mains) {

    private static final Comparator<SupplyLoad> LARGEST_FIRST = Comparator.comparingDouble(SupplyLoad::rated)
            .reversed()
            .thenComparing(SupplyLoad::id, NaturalOrder.OF_NAMES);

    /** The circuits, in their order. */
    List<LoadGroup> of(Map<SupplyLoad, Connection> fed) {
        var groups = new ArrayList<LoadGroup>();
        fed.keySet().stream().sorted(LARGEST_FIRST).forEach(load -> place(load, fed, groups));
        return groups.stream().sorted(LoadGroup.ORDER).toList();
    }

    private void place(SupplyLoad load, Map<SupplyLoad, Connection> fed, List<LoadGroup> groups) {
        var alone = new LoadGroup(connection(load, fed), load.use(), load.zone(), List.of(load));
        for (int k = 0; k < groups.size(); k++) {
            var group = groups.get(k);
            if (LoadGroup.ORDER.compare(group, alone) == 0) {
                var joined = new LoadGroup(
                        group.connection(),
                        group.use(),
                        group.zone(),
                        Stream.concat(group.loads().stream(), Stream.of(load)).toList());
                if (mayBe(joined) && holdsLike(joined, group, alone)) {
                    groups.set(k, joined);
                    return;
                }
            }
        }
        groups.add(alone);
    }

    private boolean mayBe(LoadGroup group) {
        return group.loads().size() <= group.unitLimit() && stock.couldServe(ask(group));
    }

    private boolean holdsLike(LoadGroup joined, LoadGroup group, LoadGroup alone) {
        return SupplyLoad.inrush(alone.loads()) == 0
                || stock.holds(ask(joined))
                || !(stock.holds(ask(group)) && stock.holds(ask(alone)));
    }

    /** What a circuit asks of its protective device. */
    DeviceStock.Ask ask(LoadGroup group) {
        return new DeviceStock.Ask(
                group.connection().poles(currents.basis()),
                mains.voltage(group.connection()),
                currents.circuit(group.loads()),
                group.deviceLimit(),
                SupplyLoad.inrush(group.loads()));
    }

    private static Connection connection(SupplyLoad load, Map<SupplyLoad, Connection> fed) {
        return Objects.requireNonNull(fed.get(load));
    }
}
