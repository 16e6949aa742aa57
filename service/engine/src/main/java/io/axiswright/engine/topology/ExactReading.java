package io.axiswright.engine.topology;

import com.google.ortools.sat.CpSolver;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;

/** Reads the layout out of a solved constraint model. */
final class ExactReading {

    private final ExactModel exact;
    private final CpSolver solver;
    private final Layout layout;

    private ExactReading(ExactModel exact, CpSolver solver) {
        this.exact = exact;
        this.solver = solver;
        this.layout = new Layout(exact.model.portRate().length);
    }

    static Layout of(ExactModel exact, CpSolver solver) {
        return new ExactReading(exact, solver).read();
    }

    private Layout read() {
        for (int slot = 0; slot < exact.slots.count(); slot++) {
            if (solver.booleanValue(exact.chains.first.get(slot))) {
                follow(slot, freePort(slot));
            }
        }
        return layout;
    }

    private void follow(int start, Trunk trunk) {
        for (int slot = start; slot >= 0; slot = after(slot)) {
            trunk.chain.add(node(slot));
        }
    }

    private Node node(int slot) {
        int type = exact.typed.keySet().stream()
                .filter(cell -> cell.row() == slot && solver.booleanValue(exact.typed(slot, cell.column())))
                .findFirst()
                .orElseThrow()
                .column();
        var node = new Node(exact.place(slot), type);
        exact.hung.forEach((cell, here) -> {
            if (cell.column() == slot && solver.booleanValue(here)) {
                node.axes.add(cell.row());
            }
        });
        return node;
    }

    private int after(int slot) {
        return exact.chains.next.entrySet().stream()
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
        long[] rates = exact.chains.portClass;
        for (int k = 0; k < rates.length; k++) {
            if (rates.length == 1 || solver.booleanValue(exact.chains.onClass(slot, k))) {
                return rates.length == 1 || exact.model.portRate()[trunk.port] == rates[k];
            }
        }
        return false;
    }
}
