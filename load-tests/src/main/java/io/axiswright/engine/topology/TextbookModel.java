package io.axiswright.engine.topology;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The same layout as textbooks write it: capacitated facility location with a single source for every axis, capacities alone linking
 * axes and gateways, trunks by arcs with the order constraints of Miller, Tucker and Zemlin. No hint, the solver as it comes but for
 * one worker, the seed and the same limit of work. For machines of one gateway type, one gateway in a place and rates that do not
 * bind.
 */
final class TextbookModel {

    /** Cost of the layout found, absent without one, and the bound proven, in the model's money unit. */
    record Answer(@Nullable Long cost, long bound) {}

    private final CpModel cp = new CpModel();
    private final LayoutModel model;
    private final LayoutModel.Type type;
    private final int places;
    private final List<BoolVar> open = new ArrayList<>();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();

    private TextbookModel(LayoutModel model) {
        this.model = model;
        this.type = model.types().getFirst();
        this.places = model.places();
        for (int place = 0; place < places; place++) {
            open.add(cp.newBoolVar("y" + place));
            cost.addTerm(open.get(place), type.price());
        }
        assign();
        chain();
        cp.minimize(cost);
    }

    static Answer solve(LayoutModel model, double limit) {
        var textbook = new TextbookModel(model);
        var solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(limit);
        CpSolverStatus status = solver.solve(textbook.cp);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Answer(found ? Math.round(solver.objectiveValue()) : null, (long)
                Math.ceil(solver.bestObjectiveBound() - 1e-3));
    }

    private void assign() {
        var sources = new ArrayList<LinearExprBuilder>();
        for (int axis = 0; axis < model.axes().size(); axis++) {
            sources.add(LinearExpr.newBuilder());
        }
        for (int place = 0; place < places; place++) {
            LinearExprBuilder ports = LinearExpr.newBuilder().addTerm(open.get(place), -type.drivePorts());
            LinearExprBuilder brakes = LinearExpr.newBuilder().addTerm(open.get(place), -type.brakeOutputs());
            var zones = new ArrayList<LinearExprBuilder>();
            LinearExprBuilder oneZone = LinearExpr.newBuilder();
            for (int zone = 0; zone < model.zones(); zone++) {
                BoolVar here = cp.newBoolVar("z" + place + "_" + zone);
                oneZone.add(here);
                zones.add(LinearExpr.newBuilder().addTerm(here, -type.drivePorts()));
            }
            for (int axis = 0; axis < model.axes().size(); axis++) {
                if (model.spur().reaches(axis, place)) {
                    BoolVar hung = cp.newBoolVar("x" + axis + "_" + place);
                    sources.get(axis).add(hung);
                    ports.add(hung);
                    if (model.axes().get(axis).brake()) {
                        brakes.add(hung);
                    }
                    if (model.axes().get(axis).zone() >= 0) {
                        zones.get(model.axes().get(axis).zone()).add(hung);
                    }
                    cost.addTerm(hung, model.spur().cost()[axis][place]);
                }
            }
            cp.addLessOrEqual(ports, 0);
            cp.addLessOrEqual(brakes, 0);
            cp.addLessOrEqual(oneZone, 1);
            zones.forEach(zone -> cp.addLessOrEqual(zone, 0));
        }
        sources.forEach(source -> cp.addEquality(source, 1));
    }

    private void chain() {
        int deepest = type.chainDepth();
        LinearExprBuilder trunks = LinearExpr.newBuilder();
        var into = new ArrayList<LinearExprBuilder>();
        var outOf = new ArrayList<LinearExprBuilder>();
        var depth = new ArrayList<IntVar>();
        for (int place = 0; place < places; place++) {
            into.add(LinearExpr.newBuilder().addTerm(open.get(place), -1));
            outOf.add(LinearExpr.newBuilder().addTerm(open.get(place), -1));
            depth.add(cp.newIntVar(1, deepest, "d" + place));
            if (model.host().reaches(0, place)) {
                BoolVar first = cp.newBoolVar("h" + place);
                trunks.add(first);
                into.get(place).add(first);
                cost.addTerm(first, model.host().cost()[0][place]);
            }
        }
        for (int from = 0; from < places; from++) {
            for (int to = 0; to < places; to++) {
                if (from != to && model.trunk().reaches(from, to)) {
                    BoolVar arc = cp.newBoolVar("a" + from + "_" + to);
                    into.get(to).add(arc);
                    outOf.get(from).add(arc);
                    cost.addTerm(arc, model.trunk().cost()[from][to]);
                    // d(to) ≥ d(from) + 1 − D·(1 − a)
                    cp.addGreaterOrEqual(
                            LinearExpr.newBuilder()
                                    .add(depth.get(to))
                                    .addTerm(depth.get(from), -1)
                                    .addTerm(arc, -deepest),
                            1 - deepest);
                }
            }
        }
        into.forEach(sum -> cp.addEquality(sum, 0));
        outOf.forEach(sum -> cp.addLessOrEqual(sum, 0));
        cp.addLessOrEqual(trunks, model.portRate().length);
    }
}
