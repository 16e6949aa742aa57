package io.axiswright.engine.topology;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.LayoutModel.Axis;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The layout as a constraint model: which type stands in which slot and which axis hangs on it. How the gateways are joined is told
 * by {@link ExactChains} or {@link TrunkModel}. The implication "axis on slot, so slot used" is what makes the linear relaxation tight.
 */
final class ExactModel {

    /** A cell of a table of variables. */
    record Cell(int row, int column) {}

    final CpModel cp = new CpModel();
    final LayoutModel model;
    final Slots slots;
    final List<BoolVar> used = new ArrayList<>();
    /** Slot × type. */
    final Map<Cell, BoolVar> typed = new LinkedHashMap<>();
    /** Axis × slot, only where a cable reaches. */
    final Map<Cell, BoolVar> hung = new LinkedHashMap<>();
    /** Slot × stop zone; only if zones matter. */
    final Map<Cell, BoolVar> zoned = new LinkedHashMap<>();

    /** Group of axes with a price on hanging together × slot: some axis of it hangs there. */
    final Map<Cell, BoolVar> met = new LinkedHashMap<>();

    /** Zone × type: by slot, whether a gateway of that type there serves the zone. */
    private final Map<Cell, List<BoolVar>> serve = new LinkedHashMap<>();

    ExactModel(LayoutModel model, Slots slots) {
        this.model = model;
        this.slots = slots;
        addSlots();
        addAxes();
        addLimits();
        addSymmetry();
        addWholeGateways(
                model.axes().size(),
                type -> IntStream.range(0, slots.count())
                        .mapToObj(slot -> typed(slot, type))
                        .toList());
        if (model.zonesMatter()) {
            addZones();
        }
        addSeparations();
    }

    int place(int slot) {
        return slots.place().get(slot);
    }

    private void addSlots() {
        for (int slot = 0; slot < slots.count(); slot++) {
            BoolVar use = cp.newBoolVar("u" + slot);
            used.add(use);
            var choice = new ArrayList<Literal>();
            choice.add(use.not());
            for (int type = 0; type < model.types().size(); type++) {
                BoolVar chosen = cp.newBoolVar("y" + slot + "_" + type);
                typed.put(new Cell(slot, type), chosen);
                choice.add(chosen);
            }
            cp.addExactlyOne(choice);
        }
        cp.addGreaterOrEqual(LinearExpr.sum(used.toArray(new BoolVar[0])), GatewayCounts.fewestGateways(model));
        if (model.limitsGateways()) {
            cp.addLessOrEqual(LinearExpr.sum(used.toArray(new BoolVar[0])), model.gatewayLimit());
        }
    }

    private void addAxes() {
        for (int axis = 0; axis < model.axes().size(); axis++) {
            var choice = new ArrayList<Literal>();
            for (int slot = 0; slot < slots.count(); slot++) {
                if (model.spur().reaches(axis, place(slot))) {
                    BoolVar here = cp.newBoolVar("x" + axis + "_" + slot);
                    hung.put(new Cell(axis, slot), here);
                    choice.add(here);
                    cp.addImplication(here, used.get(slot));
                }
            }
            cp.addExactlyOne(choice);
        }
    }

    /** Drive ports, brake outputs and, as far as one gateway can exceed it, the command rate. */
    private void addLimits() {
        for (int slot = 0; slot < slots.count(); slot++) {
            LinearExprBuilder ports = axesOn(slot, any -> true);
            LinearExprBuilder brakes = axesOn(slot, Axis::brake);
            for (int type = 0; type < model.types().size(); type++) {
                ports.addTerm(typed(slot, type), -model.types().get(type).drivePorts());
                brakes.addTerm(typed(slot, type), -model.types().get(type).brakeOutputs());
            }
            cp.addLessOrEqual(ports, 0);
            cp.addLessOrEqual(brakes, 0);
            if (model.ratesMatter()) {
                cp.addLessOrEqual(rateOn(slot).addTerm(used.get(slot), -model.fastestPort()), 0);
            }
        }
    }

    /** Slots at one place are alike: used ones come first, fuller ones first. */
    private void addSymmetry() {
        for (int slot = 0; slot < slots.count(); slot++) {
            if (slots.followsTwin(slot)) {
                cp.addImplication(used.get(slot), used.get(slot - 1));
                cp.addLessOrEqual(axesOn(slot, any -> true), axesOn(slot - 1, any -> true));
            }
        }
    }

    private void addZones() {
        for (int slot = 0; slot < slots.count(); slot++) {
            var zones = new BoolVar[model.zones()];
            for (int zone = 0; zone < zones.length; zone++) {
                zones[zone] = cp.newBoolVar("q" + slot + "_" + zone);
                zoned.put(new Cell(slot, zone), zones[zone]);
            }
            for (int axis = 0; axis < model.axes().size(); axis++) {
                BoolVar here = hung.get(new Cell(axis, slot));
                int zone = model.axes().get(axis).zone();
                if (here != null && zone >= 0) {
                    cp.addImplication(here, zones[zone]);
                }
            }
            for (int zone = 0; zone < zones.length; zone++) {
                cp.addImplication(zones[zone], used.get(slot));
                // Implied, but it makes the relaxation see that a zone's axes fill gateways of their own.
                int served = zone;
                cp.addLessOrEqual(
                        axesOn(slot, axis -> axis.zone() == served).addTerm(zones[zone], -model.mostDrivePorts()), 0);
            }
            for (int type = 0; type < model.types().size(); type++) {
                if (model.types().get(type).scope() != StopScope.NONE) {
                    cp.addLessOrEqual(LinearExpr.sum(zones), 1).onlyEnforceIf(typed(slot, type));
                }
            }
            if (model.everyGatewayInOneZone()) {
                cp.addLessOrEqual(LinearExpr.sum(zones), used.get(slot));
                addTypesOfZones(slot, zones);
            }
        }
        for (int zone = 0; zone < model.zones(); zone++) {
            int served = zone;
            if (model.everyGatewayInOneZone()) {
                addWholeGateways(model.zoneSize(zone), type -> serve.getOrDefault(new Cell(served, type), List.of()));
            }
            LinearExprBuilder gateways = LinearExpr.newBuilder();
            for (int slot = 0; slot < slots.count(); slot++) {
                gateways.add(zoned(slot, zone));
            }
            cp.addGreaterOrEqual(gateways, Math.ceilDiv(model.zoneSize(zone), model.mostDrivePorts()));
        }
    }

    /**
     * Which type serves which zone. Implied, but the relaxation learns from it that a gateway has no more ports than its zone has axes, so
     * that a dear one with many ports is not bought by halves.
     */
    private void addTypesOfZones(int slot, BoolVar[] zones) {
        int types = model.types().size();
        var serving = new LinearExprBuilder[types];
        for (int type = 0; type < types; type++) {
            serving[type] = LinearExpr.newBuilder().addTerm(typed(slot, type), -1);
        }
        for (int zone = 0; zone < zones.length; zone++) {
            var choice = new ArrayList<Literal>();
            choice.add(zones[zone].not());
            int served = zone;
            LinearExprBuilder ports = axesOn(slot, axis -> axis.zone() == served);
            LinearExprBuilder brakes = axesOn(slot, axis -> axis.zone() == served && axis.brake());
            for (int type = 0; type < types; type++) {
                BoolVar serves = cp.newBoolVar("z" + slot + "_" + zone + "_" + type);
                serve.computeIfAbsent(new Cell(zone, type), all -> new ArrayList<>())
                        .add(serves);
                choice.add(serves);
                serving[type].add(serves);
                ports.addTerm(serves, -Math.min(model.types().get(type).drivePorts(), model.zoneSize(zone)));
                brakes.addTerm(serves, -Math.min(model.types().get(type).brakeOutputs(), model.zoneBrakes(zone)));
            }
            cp.addExactlyOne(choice);
            cp.addLessOrEqual(ports, 0);
            cp.addLessOrEqual(brakes, 0);
        }
        for (LinearExprBuilder sum : serving) {
            cp.addLessOrEqual(sum, 0);
        }
    }

    /**
     * The axes of a zone, or all, in whole gateways: for any d, Σ ⌈ports/d⌉ over the gateways that serve them is at least ⌈axes/d⌉
     * (rounding of V. Chvátal, Discrete Mathematics 4 (1973) 305-337, from memory). Of five axes it says that one gateway of four ports
     * does not do.
     *
     * @param serving by type the variables that say it serves them
     */
    private void addWholeGateways(int axes, IntFunction<List<BoolVar>> serving) {
        for (int divisor : model.types().stream()
                .mapToInt(LayoutModel.Type::drivePorts)
                .filter(ports -> ports > 0 && ports < axes)
                .distinct()
                .toArray()) {
            LinearExprBuilder whole = LinearExpr.newBuilder();
            for (int type = 0; type < model.types().size(); type++) {
                int ports = Math.min(model.types().get(type).drivePorts(), axes);
                for (BoolVar serves : serving.apply(type)) {
                    whole.addTerm(serves, Math.ceilDiv(ports, divisor));
                }
            }
            cp.addGreaterOrEqual(whole, Math.ceilDiv(axes, divisor));
        }
    }

    private void addSeparations() {
        Separations separations = model.separations();
        for (int group = 0; group < separations.count(); group++) {
            for (int slot = 0; slot < slots.count(); slot++) {
                var here = new ArrayList<Literal>();
                for (int axis : separations.members(group)) {
                    BoolVar hangs = hung.get(new Cell(axis, slot));
                    if (hangs != null) {
                        here.add(hangs);
                    }
                }
                if (separations.never(group)) {
                    cp.addAtMostOne(here);
                } else {
                    BoolVar some = cp.newBoolVar("m" + group + "_" + slot);
                    met.put(new Cell(group, slot), some);
                    here.add(some.not());
                    cp.addBoolOr(here);
                }
            }
        }
    }

    /** How many axes of a kind hang on a slot. */
    private LinearExprBuilder axesOn(int slot, Predicate<Axis> kind) {
        LinearExprBuilder count = LinearExpr.newBuilder();
        for (int axis = 0; axis < model.axes().size(); axis++) {
            BoolVar here = hung.get(new Cell(axis, slot));
            if (here != null && kind.test(model.axes().get(axis))) {
                count.add(here);
            }
        }
        return count;
    }

    BoolVar typed(int slot, int type) {
        return java.util.Objects.requireNonNull(typed.get(new Cell(slot, type)));
    }

    BoolVar zoned(int slot, int zone) {
        return java.util.Objects.requireNonNull(zoned.get(new Cell(slot, zone)));
    }

    LinearExprBuilder rateOn(int slot) {
        LinearExprBuilder rate = LinearExpr.newBuilder();
        for (int axis = 0; axis < model.axes().size(); axis++) {
            BoolVar here = hung.get(new Cell(axis, slot));
            if (here != null) {
                rate.addTerm(here, model.axes().get(axis).rate());
            }
        }
        return rate;
    }

    /** Cost of gateways, spurs and separations in the model's money unit. */
    LinearExprBuilder cost() {
        LinearExprBuilder cost = LinearExpr.newBuilder();
        typed.forEach((cell, chosen) ->
                cost.addTerm(chosen, model.types().get(cell.column()).price()));
        hung.forEach((cell, here) -> cost.addTerm(here, model.spur().cost()[cell.row()][place(cell.column())]));
        // of the axes of a group all but one on each gateway it meets count
        Separations separations = model.separations();
        for (int group = 0; group < separations.count(); group++) {
            if (!separations.never(group)) {
                cost.add(separations.price(group) * separations.members(group).length);
            }
        }
        met.forEach((cell, some) -> cost.addTerm(some, -separations.price(cell.row())));
        return cost;
    }

    /** Length of all spurs in mm. */
    LinearExprBuilder length() {
        LinearExprBuilder length = LinearExpr.newBuilder();
        hung.forEach((cell, here) -> length.addTerm(here, model.spur().length()[cell.row()][place(cell.column())]));
        return length;
    }

    /** The stop zones of the axes on gateways. */
    Set<Integer> zones(List<Node> nodes) {
        Set<Integer> zones = new TreeSet<>();
        for (Node node : nodes) {
            node.axes.forEach(axis -> zones.add(model.axes().get(axis).zone()));
        }
        zones.remove(-1);
        return zones;
    }

    /** The gateway a solver put in a slot; null if none. */
    @Nullable
    Node gateway(int slot, CpSolver solver) {
        for (int type = 0; type < model.types().size(); type++) {
            if (solver.booleanValue(typed(slot, type))) {
                var node = new Node(place(slot), type);
                for (int axis = 0; axis < model.axes().size(); axis++) {
                    BoolVar here = hung.get(new Cell(axis, slot));
                    if (here != null && solver.booleanValue(here)) {
                        node.axes.add(axis);
                    }
                }
                return node;
            }
        }
        return null;
    }

    /**
     * Hints that these gateways stand in these slots, in no others any, with the axes they carry.
     *
     * @param zones the stop zones each is said to have
     */
    void hint(Map<Node, Integer> slotOf, Function<Node, Set<Integer>> zones) {
        Set<Cell> stand = new HashSet<>();
        Set<Cell> hang = new HashSet<>();
        Set<Cell> stop = new HashSet<>();
        slotOf.forEach((node, slot) -> {
            stand.add(new Cell(slot, node.type));
            zones.apply(node).forEach(zone -> stop.add(new Cell(slot, zone)));
            node.axes.forEach(axis -> hang.add(new Cell(axis, slot)));
        });
        for (int slot = 0; slot < slots.count(); slot++) {
            cp.addHint(used.get(slot), slotOf.containsValue(slot));
        }
        typed.forEach((cell, chosen) -> cp.addHint(chosen, stand.contains(cell)));
        hung.forEach((cell, here) -> cp.addHint(here, hang.contains(cell)));
        zoned.forEach((cell, in) -> cp.addHint(in, stop.contains(cell)));
        met.forEach((cell, some) -> cp.addHint(
                some,
                Arrays.stream(model.separations().members(cell.row()))
                        .anyMatch(axis -> hang.contains(new Cell(axis, cell.column())))));
    }
}
