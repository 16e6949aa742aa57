package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.braking.GroupBraking;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.memory.Memory;
import io.axiswright.engine.mounting.AxisMounting;
import io.axiswright.engine.stopping.AxisStopping;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.LayoutPlanning;
import io.axiswright.engine.topology.SpurLink;
import io.axiswright.engine.topology.TopologyRequest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Twelve axes, listed in no order at all. */
class CanonicalRequestTest {

    private static final StudyRequest LISTED = TestCell.request(12);
    private static final StudyRequest SHUFFLED = shuffled(7);
    private static final List<String> IDS =
            SHUFFLED.design().axes().stream().map(Axis::id).toList();

    private final StudyResult result = SystemStudy.with(LayoutEffort.HEURISTIC).system(SHUFFLED);

    private static StudyRequest shuffled(long seed) {
        List<Axis> axes = new ArrayList<>(LISTED.design().axes());
        Collections.shuffle(axes, new Random(seed));
        return Copies.with(LISTED, "design", Copies.with(LISTED.design(), "axes", axes));
    }

    @Test
    void listsOfTheAnswerFollowTheCallers() {
        assertThat(IDS)
                .isNotEqualTo(LISTED.design().axes().stream().map(Axis::id).toList());
        assertThat(result.duty().axes()).extracting(AxisDuty::axis).isEqualTo(IDS);
        assertThat(result.mounting().axes()).extracting(AxisMounting::axis).isEqualTo(IDS);
        assertThat(result.stopping().powerLosses())
                .extracting(AxisStopping::axis)
                .isEqualTo(IDS);
        assertThat(result.braking().groups()).extracting(GroupBraking::id).isEqualTo(IDS);
        assertThat(result.topology().gateways()).hasSizeGreaterThan(1).allSatisfy(gateway -> {
            List<String> spurs = gateway.spurs().stream().map(SpurLink::axis).toList();
            assertThat(spurs)
                    .hasSizeGreaterThan(1)
                    .isEqualTo(IDS.stream().filter(spurs::contains).toList());
        });
    }

    /** The circuits of the drive units, one each: that of axis-2 comes before that of axis-10. */
    @Test
    void whatIsCountedIsCountedInTheOrderOfIds() {
        List<String> loads = result.supply().circuits().stream()
                .flatMap(circuit -> circuit.loads().stream())
                .filter(IDS::contains)
                .toList();
        assertThat(loads)
                .isEqualTo(LISTED.design().axes().stream().map(Axis::id).toList());
    }

    @Test
    void pointersLeadToTheAxesAsTheyWereListed() {
        Set<String> met = new HashSet<>();
        for (Finding finding : result.findings()) {
            if (IDS.contains(finding.subject()) && finding.pointer().startsWith("/design/axes/")) {
                int index = Integer.parseInt(finding.pointer().split("/")[3]);
                assertThat(IDS.get(index)).as(finding.text()).isEqualTo(finding.subject());
                met.add(finding.subject());
            }
        }
        assertThat(met).hasSizeGreaterThan(6);
    }

    /** So a layout known for one order is known for every other. */
    @Test
    void theNetworkIsTheSameInEveryOrder() {
        Set<TopologyRequest> asked = new HashSet<>();
        SystemStudy study = SystemStudy.planned(
                request -> {
                    asked.add(request);
                    return new LayoutPlanning().plan(Copies.with(request, "effort", LayoutEffort.HEURISTIC));
                },
                Memory.NONE);
        study.topology(LISTED);
        for (long seed = 1; seed <= 5; seed++) {
            study.topology(shuffled(seed));
        }
        assertThat(asked).hasSize(1);
    }
}
