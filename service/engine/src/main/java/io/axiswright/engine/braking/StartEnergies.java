package io.axiswright.engine.braking;

import java.util.List;

/**
 * The energy of the bus at every instant of its steady cycle, from which a stop begun there starts. With a chopper it is that
 * of the bus whose chopper switches infinitely fast, and at least the switch-on energy: the switching is not in step with a
 * stop, so the capacitor is credited with nothing.
 */
final class StartEnergies {

    private static final int MOST_CYCLES = 64;
    private static final double REPEATS = 1e-12;

    private final BusLog log = new BusLog(Integer.MAX_VALUE);
    private final List<BusNode> nodes = log.nodes();
    private final double decay;
    private final double least;
    private double highest;

    private StartEnergies(double decay, double least) {
        this.decay = decay;
        this.least = least;
        this.highest = least;
    }

    /**
     * The energies over one cycle.
     *
     * @param power power returned over the cycle
     * @param most highest energy of the cycle; where that reaches the trip, every stop starts from the trip
     */
    static StartEnergies of(BusPower power, Bus bus, Chopper chopper, double most) {
        double top = Math.max(bus.tripEnergy(), bus.floorEnergy());
        if (most >= top || power.segments().isEmpty()) {
            return new StartEnergies(chopper.decay(), power.segments().isEmpty() ? bus.floorEnergy() : top);
        }
        var energies = new StartEnergies(chopper.decay(), chopper.present() ? chopper.onEnergy() : bus.floorEnergy());
        var simulation = new BusSimulation(bus, chopper.regulating());
        BusState state = new BusState(bus.floorEnergy(), false, 0);
        double tolerance = REPEATS * (bus.floorEnergy() + power.returned() + power.drawn());
        for (int cycle = 0; cycle < MOST_CYCLES; cycle++) {
            energies.log.clear();
            BusTrace trace = simulation.run(power, state, energies.log);
            energies.highest = Math.max(energies.least, trace.peakEnergy());
            if (Math.abs(trace.end().energy() - state.energy()) <= tolerance) {
                break;
            }
            state = trace.end().withRise(0);
        }
        return energies;
    }

    /** Every instant at which the state changes its kind, ascending, s. */
    double[] cuts() {
        return nodes.stream().mapToDouble(BusNode::instant).toArray();
    }

    /** The highest of them, J. */
    double highest() {
        return highest;
    }

    /** Energy at an instant, J; which of two limits at a jump is told by an instant beside it. */
    double at(double instant, double beside) {
        if (nodes.isEmpty()) {
            return least;
        }
        // the instant beside it may lie beyond the next of the nodes
        BusNode node = beside < instant ? before(Math.nextDown(instant)) : before(instant);
        double local = node.local() + (instant - node.instant());
        double energy = node.energyAt(local, decay);
        return Math.max(least, energy);
    }

    /** The most the energy between two instants with no cut between them exceeds its chord, J. */
    double bend(double from, double to) {
        if (nodes.isEmpty()) {
            return 0;
        }
        BusNode node = before((from + to) / 2);
        double start = node.local() + (from - node.instant());
        double end = node.local() + (to - node.instant());
        double slope = node.segment().steepest(start, end);
        double second = switch (node.mode()) {
            case HELD -> 0;
            case FREE -> decay > 0 ? 0 : slope; // below switch-on, which is the least a stop starts from
            case CHOPPING -> slope + decay * (power(node, start, end) + decay * energyBound(node, end));
        };
        return second * (to - from) * (to - from) / 8;
    }

    private static double power(BusNode node, double start, double end) {
        return Math.max(
                Math.abs(node.segment().slope(start)), Math.abs(node.segment().slope(end)));
    }

    private static double energyBound(BusNode node, double end) {
        return node.energy() + Math.max(0, node.segment().energy(node.local(), end));
    }

    private BusNode before(double instant) {
        int low = 0;
        int high = nodes.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (nodes.get(middle).instant() <= instant) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return nodes.get(low);
    }
}
