package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Host;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.study.TestCell;
import io.axiswright.engine.topology.SearchGate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Four axes in a zone each have a circuit each; without the first of them the others move up by one. */
@org.jspecify.annotations.NullUnmarked
class CountedPartsTest {

    private static final Comparison COMPARISON = new Comparison(new SearchGate(1));
    private static final StudyRequest ALL = request("zone-", 0, 1, 2, 3);
    private static final StudyRequest REST = request("zone-", 1, 2, 3);

    private static StudyRequest request(String zones, int... places) {
        StudyRequest cell = TestCell.request(4);
        StopZone zone = cell.design().stopZones().getFirst();
        List<Axis> axes = new ArrayList<>();
        List<StopZone> all = new ArrayList<>();
        for (int place : places) {
            axes.add(Copies.with(TestCell.axis(place), "stopZone", zones + place));
            all.add(Copies.with(zone, "id", zones + place));
        }
        Design design = Copies.with(Copies.with(cell.design(), "axes", axes), "stopZones", all);
        return new StudyRequest(cell.codeBasis(), cell.catalogue(), design);
    }

    private static ComparisonResult compare(StudyRequest before, StudyRequest after) {
        return COMPARISON.compare(new ComparisonRequest(before, after, 100));
    }

    /** The independent route: the loads as the two results by themselves list them. */
    private static Map<Set<String>, String> byLoads(StudyRequest request) {
        StudyResult result = SystemStudy.proving().system(request);
        Map<Set<String>, String> circuits = new HashMap<>();
        result.supply().circuits().forEach(circuit -> circuits.put(new TreeSet<>(circuit.loads()), circuit.id()));
        return circuits;
    }

    @Test
    void theCircuitOfTheSameLoadsIsTheSame() {
        Map<Set<String>, String> before = byLoads(ALL);
        Map<Set<String>, String> after = byLoads(REST);
        Map<String, String> moved = new HashMap<>();
        after.forEach((loads, number) -> {
            String old = before.get(loads);
            if (old != null && !old.equals(number)) {
                moved.put(old, number);
            }
        });
        assertThat(moved).as("circuits that moved up").hasSizeGreaterThan(1);

        ComparisonResult result = compare(ALL, REST);
        assertThat(result.renumbered()).isEqualTo(moved);
        String gone = before.get(Set.of("axis-0")) + " (before)";
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.kind()).isEqualTo(ChangeKind.REMOVED);
            assertThat(c.path()).isEqualTo("/supply/circuits/" + gone);
        });
        assertThat(result.consequences())
                .filteredOn(c -> c.path().startsWith("/supply/circuits/")
                        || c.path().startsWith("/conductors/circuits/")
                        || c.path().startsWith("/faults/points/axis-"))
                .as("nothing of the other circuits changed")
                .allMatch(c -> c.path().contains(gone)
                        || c.path().contains("/feeder/")
                        || c.path().contains("control-supply")
                        || c.path().equals("/faults/points/axis-0"));
        assertThat(result.consequences()).noneMatch(c -> c.path().endsWith("/circuit"));
    }

    /** The change is found as the cause, though every trial numbers its circuits by itself. */
    @Test
    void trialsKeepTheNumbersToo() {
        List<Axis> axes = new ArrayList<>(REST.design().axes());
        axes.set(0, farther(axes.getFirst()));
        StudyRequest after = new StudyRequest(
                REST.codeBasis(), REST.catalogue(), Copies.with(REST.design(), "axes", List.copyOf(axes)));
        ComparisonResult result = compare(ALL, after);
        assertThat(result.changes()).hasSize(3);
        String place = "/design/axes/axis-1/position/y";
        String change = result.changes().stream()
                .filter(c -> c.path().equals(place))
                .map(InputChange::id)
                .findFirst()
                .orElseThrow();
        String number = byLoads(after).get(Set.of("axis-1"));
        assertThat(result.consequences())
                .filteredOn(c -> c.path().startsWith("/conductors/circuits/" + number + "/")
                        || c.path().startsWith("/supply/circuits/" + number + "/"))
                .as("its circuit")
                .isNotEmpty()
                .extracting(Consequence::causes)
                .containsOnly(List.of(new Cause(change, Role.NECESSARY_AND_SUFFICIENT)));
    }

    private static Axis farther(Axis axis) {
        return Copies.with(axis, "position", Copies.with(axis.position(), "y", new Length(20)));
    }

    /** Sixteen axes on two gateways, counted from the host on: with that at the other end they are counted the other way round. */
    @Test
    void theGatewayOfTheSameAxesIsTheSame() {
        StudyRequest cell = TestCell.request(16);
        Host host = cell.design().network().host();
        Host moved = Copies.with(host, "position", Copies.with(host.position(), "x", new Length(32)));
        Design design =
                Copies.with(cell.design(), "network", Copies.with(cell.design().network(), "host", moved));
        StudyRequest turned = new StudyRequest(cell.codeBasis(), cell.catalogue(), design);
        Map<String, Set<String>> before = gateways(cell);
        Map<String, Set<String>> after = gateways(turned);
        Map<String, String> renumbered = new HashMap<>();
        Set<String> exchanged = new HashSet<>();
        before.forEach((number, axes) -> after.forEach((other, others) -> {
            List<String> common = axes.stream().filter(others::contains).toList();
            if (2 * common.size() <= axes.size()) {
                exchanged.addAll(common);
            } else if (!number.equals(other)) {
                renumbered.put(number, other);
            }
        }));
        assertThat(renumbered).as("gateways with another number").hasSizeGreaterThan(1);

        ComparisonResult result = compare(cell, turned);
        assertThat(result.renumbered()).containsAllEntriesOf(renumbered);
        assertThat(result.consequences())
                .extracting(Consequence::path)
                .filteredOn(path -> path.startsWith("/topology/gateways/") && path.contains("/spurs/"))
                .as("spurs of axes that stayed")
                .allMatch(path -> exchanged.stream().anyMatch(axis -> (path + "/").contains("/spurs/" + axis + "/")));
    }

    private static Map<String, Set<String>> gateways(StudyRequest request) {
        Map<String, Set<String>> gateways = new HashMap<>();
        SystemStudy.proving().system(request).topology().gateways().forEach(gateway -> {
            Set<String> axes = new TreeSet<>();
            gateway.spurs().forEach(spur -> axes.add(spur.axis()));
            gateways.put(gateway.id(), axes);
        });
        return gateways;
    }

    @Test
    void backwardsIsTheInverse() {
        ComparisonResult forth = compare(ALL, REST);
        ComparisonResult back = compare(REST, ALL);
        Map<String, String> turned = new HashMap<>();
        forth.renumbered().forEach((old, number) -> turned.put(number, old));
        assertThat(back.renumbered()).isEqualTo(turned);
        assertThat(back.consequences()).hasSameSizeAs(forth.consequences());
    }
}
