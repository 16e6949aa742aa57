package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.standard.InsulationUnder;
import io.axiswright.engine.standard.LineResistances;
import io.axiswright.engine.study.CircuitConductoring.Piece;
import io.axiswright.engine.study.CircuitConductoring.PowerCable;
import io.axiswright.engine.supply.BranchCircuit;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The heat of power cables: every piece at the current of the load it runs to, in all its loaded conductors. */
final class CableHeat {

    /** Where on the way from ambient to highest temperature a conductor is on the mean; IEC 60287-3-2 Annex B, from memory. */
    private static final double MEAN_SHARE = 1.0 / 3;

    private static final double ICE_POINT = 273.15;

    private final CodeBasis basis;
    private final double celsius;
    private final ThermalCurrents currents;
    private final Map<String, BranchCircuit> circuits;

    CableHeat(StudyRun run) {
        var design = run.request().design();
        this.basis = run.request().codeBasis();
        double ambient = Needed.installation(design).ambient().si() - ICE_POINT;
        double hot = InsulationUnder.celsius(Needed.insulation(basis, design));
        this.celsius = ambient + MEAN_SHARE * (hot - ambient);
        this.currents = new ThermalCurrents(run.supplyRequest(), run.supply());
        this.circuits =
                run.supply().circuits().stream().collect(Collectors.toMap(BranchCircuit::id, Function.identity()));
    }

    /** The heat of a cable laid as the given item, W; nothing where the tables do not have it. */
    OptionalDouble watts(PowerCable cable, BulkCable item) {
        double load = cable.pieces().stream()
                .mapToDouble(piece -> piece.length() * squares(cable, piece))
                .sum();
        return LineResistances.of(basis, item.metal(), item.size(), celsius)
                .map(r -> OptionalDouble.of(r.value().si() * load))
                .orElse(OptionalDouble.empty());
    }

    /** Sum of the squared currents of all loaded conductors, A². */
    private double squares(PowerCable cable, Piece piece) {
        BranchCircuit branch = circuits.get(cable.circuit());
        if (branch == null) {
            return currents.feederSquares();
        }
        double current = currents.of(piece.load());
        return Math.max(2, branch.lines().size()) * current * current;
    }
}
