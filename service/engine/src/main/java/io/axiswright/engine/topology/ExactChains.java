package io.axiswright.engine.topology;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.sat.MultipleCircuitConstraint;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.ExactModel.Cell;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The trunks of the constraint model: circuits through the host whose way back is free. What holds for a whole trunk
 * (its port's rate, its depth, its stop zone) is handed on from slot to slot along the chosen links.
 */
final class ExactChains {

    final ExactModel exact;
    private final LayoutModel model;
    private final int count;
    private final int deepest;
    /** Rates of the host ports, each once, where the rate can bind; else a single class. */
    final long[] portClass;

    final List<BoolVar> first = new ArrayList<>();
    final List<BoolVar> last = new ArrayList<>();
    /** Link from slot to slot. */
    final Map<Cell, BoolVar> next = new LinkedHashMap<>();

    final List<IntVar> depth = new ArrayList<>();
    final List<IntVar> load = new ArrayList<>();
    final List<IntVar> depthLimit = new ArrayList<>();
    /** Slot × port class. */
    final Map<Cell, BoolVar> onClass = new LinkedHashMap<>();

    final List<BoolVar> scoped = new ArrayList<>();

    /** Links of slots of one place that are coupled directly; only where a type couples. */
    final Map<Cell, BoolVar> direct = new LinkedHashMap<>();
    /** By slot: its place in its row of directly coupled ones; only where a type couples. */
    final List<IntVar> row = new ArrayList<>();

    ExactChains(ExactModel exact) {
        this.exact = exact;
        this.model = exact.model;
        this.count = exact.slots.count();
        this.deepest = model.deepestChain();
        this.portClass = model.ratesMatter()
                ? Arrays.stream(model.portRate()).distinct().sorted().toArray()
                : new long[] {model.fastestPort()};
        addCircuit();
        addPorts();
        if (deepest > 1) {
            addDepth();
            addFlow();
        }
        if (model.couples()) {
            addRows();
        }
        if (model.ratesMatter()) {
            addRates();
        }
        if (model.zonesMatter() && model.types().stream().anyMatch(type -> type.scope() == StopScope.TRUNK)) {
            addStopZones();
        }
    }

    private void addCircuit() {
        MultipleCircuitConstraint circuit = exact.cp.addMultipleCircuit();
        for (int slot = 0; slot < count; slot++) {
            BoolVar start = exact.cp.newBoolVar("h" + slot);
            BoolVar end = exact.cp.newBoolVar("e" + slot);
            first.add(start);
            last.add(end);
            circuit.addArc(0, slot + 1, start);
            circuit.addArc(slot + 1, 0, end);
            circuit.addArc(slot + 1, slot + 1, exact.used.get(slot).not());
            if (!model.host().reaches(0, exact.place(slot))) {
                exact.cp.addEquality(start, 0);
            }
        }
        for (int from = 0; from < count && deepest > 1; from++) {
            for (int to = 0; to < count; to++) {
                boolean coupling = model.couples() && exact.place(from) == exact.place(to);
                if (from != to && (coupling || model.trunk().reaches(exact.place(from), exact.place(to)))) {
                    BoolVar link = exact.cp.newBoolVar("a" + from + "_" + to);
                    next.put(new Cell(from, to), link);
                    circuit.addArc(from + 1, to + 1, link);
                }
            }
        }
    }

    /** Gateways of one type in one place that follow each other need no cable, but for rows that would grow too long. */
    private void addRows() {
        for (int slot = 0; slot < count; slot++) {
            IntVar place = exact.cp.newIntVar(1, model.longestRow(), "r" + slot);
            row.add(place);
            for (int type = 0; type < model.types().size(); type++) {
                exact.cp
                        .addLessOrEqual(place, model.types().get(type).directRow())
                        .onlyEnforceIf(exact.typed(slot, type));
            }
        }
        next.forEach((cell, link) -> {
            int place = exact.place(cell.row());
            if (place == exact.place(cell.column())) {
                addDirect(cell, link, model.trunk().reaches(place, place));
            }
        });
    }

    private void addDirect(Cell cell, BoolVar link, boolean orByCable) {
        BoolVar coupled = exact.cp.newBoolVar("k" + cell.row() + "_" + cell.column());
        direct.put(cell, coupled);
        exact.cp.addImplication(coupled, link);
        if (!orByCable) {
            exact.cp.addImplication(link, coupled);
        }
        for (int type = 0; type < model.types().size(); type++) {
            exact.cp.addBoolOr(
                    new Literal[] {coupled.not(), exact.typed(cell.row(), type).not(), exact.typed(cell.column(), type)
                    });
        }
        exact.cp
                .addGreaterOrEqual(
                        row.get(cell.column()),
                        LinearExpr.newBuilder().add(row.get(cell.row())).add(1).build())
                .onlyEnforceIf(coupled);
    }

    private void addPorts() {
        LinearExpr trunks = LinearExpr.sum(first.toArray(new BoolVar[0]));
        exact.cp.addLessOrEqual(trunks, model.portRate().length);
        exact.cp.addGreaterOrEqual(trunks, GatewayCounts.fewestTrunks(model));
        LinearExprBuilder spare = LinearExpr.newBuilder();
        for (int slot = 0; slot < count; slot++) {
            spare.addTerm(first.get(slot), deepest).addTerm(exact.used.get(slot), -1);
        }
        exact.cp.addGreaterOrEqual(spare, 0);
    }

    private void addDepth() {
        boolean sameForAll = model.types().stream().allMatch(type -> type.chainDepth() == deepest);
        for (int slot = 0; slot < count; slot++) {
            depth.add(exact.cp.newIntVar(1, deepest, "d" + slot));
            if (!sameForAll) {
                IntVar limit = exact.cp.newIntVar(1, deepest, "l" + slot);
                depthLimit.add(limit);
                exact.cp.addLessOrEqual(depth.get(slot), limit);
                for (int type = 0; type < model.types().size(); type++) {
                    exact.cp
                            .addLessOrEqual(limit, model.types().get(type).chainDepth())
                            .onlyEnforceIf(exact.typed(slot, type));
                }
            }
        }
        next.forEach((cell, link) -> {
            exact.cp
                    .addGreaterOrEqual(
                            depth.get(cell.column()),
                            LinearExpr.newBuilder()
                                    .add(depth.get(cell.row()))
                                    .add(1)
                                    .build())
                    .onlyEnforceIf(link);
            if (!depthLimit.isEmpty()) {
                exact.cp
                        .addEquality(depthLimit.get(cell.column()), depthLimit.get(cell.row()))
                        .onlyEnforceIf(link);
            }
        });
    }

    /**
     * Links as a flow of gateways, one of which stays in every used slot. Depths imply it, but not in the relaxation: the flow tells
     * it that a link carries no more gateways than a trunk is deep, so that far ones need links of their own from nearer the host.
     * Measured with 128 axes: a third of the gap that is left without it. It gets no hint, with which the answers were worse.
     */
    private void addFlow() {
        var left = new ArrayList<LinearExprBuilder>();
        for (int slot = 0; slot < count; slot++) {
            IntVar into = exact.cp.newIntVar(0, deepest, "b" + slot);
            exact.cp.addLessOrEqual(LinearExpr.newBuilder().add(into).addTerm(first.get(slot), -deepest), 0);
            left.add(LinearExpr.newBuilder().add(into).addTerm(exact.used.get(slot), -1));
        }
        next.forEach((cell, link) -> {
            IntVar over = exact.cp.newIntVar(0, deepest - 1, "b" + cell.row() + "_" + cell.column());
            exact.cp.addLessOrEqual(LinearExpr.newBuilder().add(over).addTerm(link, 1 - deepest), 0);
            left.get(cell.row()).addTerm(over, -1);
            left.get(cell.column()).add(over);
        });
        left.forEach(none -> exact.cp.addEquality(none, 0));
    }

    private void addRates() {
        for (int slot = 0; slot < count; slot++) {
            IntVar sum = exact.cp.newIntVar(0, model.fastestPort(), "f" + slot);
            load.add(sum);
            exact.cp.addGreaterOrEqual(sum, exact.rateOn(slot).build());
            LinearExprBuilder limit = LinearExpr.newBuilder();
            var classes = new ArrayList<Literal>();
            for (int k = 0; k < portClass.length; k++) {
                BoolVar on = exact.cp.newBoolVar("c" + slot + "_" + k);
                onClass.put(new Cell(slot, k), on);
                classes.add(on);
                limit.addTerm(on, portClass[k]);
            }
            exact.cp.addExactlyOne(classes);
            exact.cp.addLessOrEqual(sum, limit.build());
        }
        next.forEach((cell, link) -> {
            LinearExpr handedOn =
                    exact.rateOn(cell.column()).add(load.get(cell.row())).build();
            exact.cp.addGreaterOrEqual(load.get(cell.column()), handedOn).onlyEnforceIf(link);
            for (int k = 0; k < portClass.length; k++) {
                exact.cp
                        .addEquality(onClass(cell.row(), k), onClass(cell.column(), k))
                        .onlyEnforceIf(link);
            }
        });
        for (int k = 0; k < portClass.length && portClass.length > 1; k++) {
            addPortsOfClass(k);
        }
    }

    private void addPortsOfClass(int k) {
        var starts = new ArrayList<BoolVar>();
        for (int slot = 0; slot < count; slot++) {
            BoolVar start = exact.cp.newBoolVar("g" + slot + "_" + k);
            starts.add(start);
            exact.cp.addBoolOr(new Literal[] {
                start, first.get(slot).not(), onClass(slot, k).not()
            });
        }
        long rate = portClass[k];
        exact.cp.addLessOrEqual(
                LinearExpr.sum(starts.toArray(new BoolVar[0])),
                Arrays.stream(model.portRate()).filter(port -> port == rate).count());
        classStarts.put(k, starts);
    }

    /** Per port class and slot: a trunk on a port of the class starts here; only with several classes. */
    final Map<Integer, List<BoolVar>> classStarts = new LinkedHashMap<>();

    private void addStopZones() {
        for (int slot = 0; slot < count; slot++) {
            BoolVar whole = exact.cp.newBoolVar("w" + slot);
            scoped.add(whole);
            var zones = new BoolVar[model.zones()];
            for (int zone = 0; zone < zones.length; zone++) {
                zones[zone] = exact.zoned(slot, zone);
            }
            exact.cp.addLessOrEqual(LinearExpr.sum(zones), 1).onlyEnforceIf(whole);
            for (int type = 0; type < model.types().size(); type++) {
                if (model.types().get(type).scope() == StopScope.TRUNK) {
                    exact.cp.addImplication(exact.typed(slot, type), whole);
                }
            }
        }
        next.forEach((cell, link) -> {
            BoolVar whole = scoped.get(cell.row());
            exact.cp.addEquality(whole, scoped.get(cell.column())).onlyEnforceIf(link);
            for (int zone = 0; zone < model.zones(); zone++) {
                exact.cp
                        .addEquality(exact.zoned(cell.row(), zone), exact.zoned(cell.column(), zone))
                        .onlyEnforceIf(new Literal[] {link, whole});
            }
        });
    }

    BoolVar onClass(int slot, int k) {
        return java.util.Objects.requireNonNull(onClass.get(new Cell(slot, k)));
    }

    /** Cost of the layout in the model's money unit. */
    LinearExpr cost() {
        LinearExprBuilder cost = exact.cost();
        addLinks(cost, LinkTable::cost);
        return cost.build();
    }

    /** Total length of cable in mm. */
    LinearExpr length() {
        LinearExprBuilder length = exact.length();
        addLinks(length, LinkTable::length);
        return length.build();
    }

    private void addLinks(LinearExprBuilder sum, Function<LinkTable, long[][]> measure) {
        long[] host = measure.apply(model.host())[0];
        for (int slot = 0; slot < count; slot++) {
            int place = exact.place(slot);
            if (model.host().reaches(0, place)) {
                sum.addTerm(first.get(slot), host[place]);
            }
        }
        long[][] trunk = measure.apply(model.trunk());
        next.forEach((cell, link) -> {
            int from = exact.place(cell.row());
            int to = exact.place(cell.column());
            if (model.trunk().reaches(from, to)) {
                sum.addTerm(link, trunk[from][to]);
                BoolVar coupled = direct.get(cell);
                if (coupled != null) {
                    sum.addTerm(coupled, -trunk[from][to]);
                }
            }
        });
    }
}
