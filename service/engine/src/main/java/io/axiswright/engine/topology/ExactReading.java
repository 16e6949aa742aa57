package io.axiswright.engine.topology;

import com.google.ortools.sat.CpSolver;
import io.axiswright.engine.topology.Layout.Trunk;

/** Reads the layout out of a solved constraint model. */
final class ExactReading {

    private final ExactChains chains;
    private final ExactModel exact;
    private final CpSolver solver;
    private final Layout layout;

    private ExactReading(ExactChains chains, CpSolver solver) {
        this.chains = chains;
        this.exact = chains.exact;
        this.solver = solver;
        this.layout = new Layout(exact.model.portRate().length);
    }

    static Layout of(ExactChains chains, CpSolver solver) {
        return new ExactReading(chains, solver).read();
    }

    private Layout read() {
        for (int slot = 0; slot < exact.slots.count(); slot++) {
            if (solver.booleanValue(chains.first.get(slot))) {
                follow(slot, freePort(slot));
            }
        }
        return layout;
    }

    private void follow(int start, Trunk trunk) {
        for (int slot = start; slot >= 0; slot = after(slot)) {
            trunk.chain.add(java.util.Objects.requireNonNull(exact.gateway(slot, solver)));
        }
    }

    private int after(int slot) {
        return chains.next.entrySet().stream()
                .filter(link -> link.getKey().row() == slot && solver.booleanValue(link.getValue()))
                .mapToInt(link -> link.getKey().column())
                .findFirst()
                .orElse(-1);
    }

    /** The first free host port of the rate the solver chose; any free one where rates cannot bind. */
    private Trunk freePort(int slot) {
        return layout.trunks.stream()
                .filter(trunk -> trunk.chain.isEmpty() && carries(trunk, slot))
                .findFirst()
                .orElseThrow();
    }

    private boolean carries(Trunk trunk, int slot) {
        long[] rates = chains.portClass;
        for (int k = 0; k < rates.length; k++) {
            if (rates.length == 1 || solver.booleanValue(chains.onClass(slot, k))) {
                return rates.length == 1 || exact.model.portRate()[trunk.port] == rates[k];
            }
        }
        return false;
    }
}
