package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.design.Operation;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.Connection;
import io.axiswright.engine.topology.LayoutEffort;
import java.math.BigDecimal;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The feeder of a machine whose drive units hang between a line and neutral. */
class FeederNeutralTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);

    /** Three or six drive units of 2 A, each on a circuit of its own; they are alike, so two stand on each line. */
    private static StudyResult study(CodeBasis basis, Feed feed, int axes, Insulation insulation) {
        StudyRequest cell = TestCell.request(axes);
        var units = cell.catalogue().driveUnits().stream()
                .map(u -> Copies.with(Copies.with(u, "feed", feed), "maxUnitsPerCircuit", 1))
                .map(u -> feed == Feed.ONE_PHASE ? Copies.with(u, "ratedVoltage", new Voltage(230)) : u)
                .toList();
        var installation = Copies.with(
                Copies.with(Objects.requireNonNull(cell.design().installation()), "insulation", insulation),
                "groupedCircuits",
                1);
        return STUDY.system(new StudyRequest(
                basis,
                Copies.with(cell.catalogue(), "driveUnits", units),
                Copies.with(
                        Copies.with(cell.design(), "installation", installation),
                        "operation",
                        new Operation(new Time(3.6e6), new Money(BigDecimal.ONE, "EUR"), null))));
    }

    private static CircuitConductors feeder(StudyResult study) {
        return study.conductors().circuits().getFirst();
    }

    private static double factor(StudyResult study, String symbol) {
        return study.conductors().derivations().stream()
                .filter(d -> d.subject().equals("feeder") && d.symbol().equals("Iz"))
                .findFirst()
                .map(d -> d.inputs().get(symbol))
                .map(q -> q.si())
                .orElse(1.0);
    }

    /**
     * The neutral carries the root of the squares of the lines' currents, and what it carries chooses the size, with the
     * factor 0.86 up to 45 % of third harmonic (IEC 60364-5-52 Table E.52.1).
     */
    @Test
    void underIecTheNeutralChoosesTheSize() {
        var study = study(CodeBasis.IEC_60204_1, Feed.ONE_PHASE, 6, Insulation.PVC_70);
        double neutral =
                Objects.requireNonNull(study.supply().feeder().neutralCurrent()).si();
        double design = study.supply().feeder().designCurrent().si();
        assertThat(neutral).isGreaterThan(1.3 * design);
        assertThat(Objects.requireNonNull(feeder(study).neutralCurrent()).si()).isCloseTo(neutral, within(1e-9));
        // the device is laid on the neutral too: its rating times neutral over line current is within the ampacity
        assertThat(Objects.requireNonNull(feeder(study).correctedAmpacity()).si())
                .isGreaterThanOrEqualTo(neutral
                        / design
                        * Objects.requireNonNull(feeder(study).deviceRating()).si());
        assertThat(factor(study, "Cn")).isEqualTo(neutral / design / 3 > 0.45 ? 1 : 0.86);
    }

    /** Between the lines nothing flows in a neutral, but for the control supply: too little to count. */
    @Test
    void threePhaseUnitsLeaveItAlone() {
        var study = study(CodeBasis.IEC_60204_1, Feed.THREE_PHASE, 12, Insulation.PVC_70);
        double neutral =
                Objects.requireNonNull(study.supply().feeder().neutralCurrent()).si();
        assertThat(neutral / 3 / study.supply().feeder().designCurrent().si()).isLessThan(0.15);
        assertThat(factor(study, "Cn")).isEqualTo(1);
        assertThat(factor(study(CodeBasis.NFPA_79, Feed.THREE_PHASE, 12, Insulation.NEC_75), "Cg"))
                .isEqualTo(1);
    }

    /** NFPA 70 310.15(E)(3): four conductors carry current, 310.15(C)(1) asks for 0.8. */
    @Test
    void underNfpaItIsAFourthConductor() {
        var study = study(CodeBasis.NFPA_79, Feed.ONE_PHASE, 6, Insulation.NEC_75);
        assertThat(factor(study, "Cg")).isEqualTo(0.8);
        assertThat(feeder(study).neutralCurrent()).isNotNull();
    }

    /**
     * All loads hang between a line and neutral, so the neutral can carry the root of the squares of the lines: its heat is that of
     * all lines together. Ten metres of 1.5 mm², 13.3 ohm/km at 20 °C (IEC 60228 class 5), at 40 °C + (70 − 40)/3 K = 50 °C.
     */
    @Test
    void itsHeatCounts() {
        var study = study(CodeBasis.IEC_60204_1, Feed.ONE_PHASE, 3, Insulation.PVC_70);
        assertThat(study.supply().circuits()).allMatch(c -> c.connection() == Connection.LINE_TO_NEUTRAL);
        double squares = study.supply().balance().lines().stream()
                .mapToDouble(line ->
                        line.thermalCurrent().si() * line.thermalCurrent().si())
                .sum();
        double watts = 2 * squares * 10 * 13.3e-3 * (1 + 0.00393 * 30);
        assertThat(study.billOfMaterials().required().lines())
                .extracting(BillLine::item)
                .filteredOn(item -> item.startsWith("power-5x"))
                .containsExactly("power-5x1.5");
        assertThat(Objects.requireNonNull(study.energy()).conductors())
                .filteredOn(c -> c.circuit().equals("feeder"))
                .singleElement()
                .satisfies(c -> assertThat(c.lost().meanPower().si()).isCloseTo(watts, within(1e-9 * watts)));
    }
}
