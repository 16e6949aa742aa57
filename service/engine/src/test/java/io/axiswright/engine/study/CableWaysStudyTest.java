package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.CableWays;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.WayNode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.SpurLink;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Cable ways through the disciplines: every cable from one position to another goes by way of them. */
class CableWaysStudyTest {

    /** Half a metre beside the mains panel; the axis stands 2 m and the gateway 7 m along the machine. */
    private static final WayNode NODE =
            new WayNode("duct", new Position(new Length(0), new Length(0.5), new Length(1)));

    private static StudyResult study() {
        Design d = TestCell.design(2);
        var network =
                Copies.with(Objects.requireNonNull(d.network()), "ways", new CableWays(List.of(NODE), List.of(), null));
        var request = TestCell.request(2);
        return SystemStudy.with(LayoutEffort.HEURISTIC)
                .system(new StudyRequest(request.codeBasis(), request.catalogue(), Copies.with(d, "network", network)));
    }

    @Test
    void spursAndPowerCablesGoByWayOfTheNode() {
        StudyResult result = study();

        // gateway to node 7.5, node to axis 2.5; factor 1.1 and 0.3 m at both ends
        assertThat(result.topology().gateways().getFirst().spurs())
                .filteredOn(spur -> spur.axis().equals("axis-1"))
                .extracting(SpurLink::routeLength)
                .singleElement()
                .satisfies(length -> assertThat(length.si()).isCloseTo(1.1 * 10 + 0.6, within(1e-9)));
        // mains panel to node 0.5, node to axis 2.5
        assertThat(result.supply().circuits())
                .filteredOn(circuit -> circuit.loads().contains("axis-1"))
                .singleElement()
                .satisfies(circuit -> assertThat(circuit.longestRoute().si()).isCloseTo(1.1 * 3 + 0.6, within(1e-9)));
    }
}
