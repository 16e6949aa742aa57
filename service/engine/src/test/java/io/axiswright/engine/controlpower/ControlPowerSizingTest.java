package io.axiswright.engine.controlpower;

import static io.axiswright.engine.controlpower.ControlParts.MAINS;
import static io.axiswright.engine.controlpower.ControlParts.SITE;
import static io.axiswright.engine.controlpower.ControlParts.brake;
import static io.axiswright.engine.controlpower.ControlParts.cable;
import static io.axiswright.engine.controlpower.ControlParts.load;
import static io.axiswright.engine.controlpower.ControlParts.node;
import static io.axiswright.engine.controlpower.ControlParts.spec;
import static io.axiswright.engine.controlpower.ControlParts.supply;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.Accessory;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Resistance;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ControlPowerSizingTest {

    private static final List<CableAssembly> CABLES = List.of(
            cable("thin", 20, 30, "0.75 mm2"), cable("middle", 40, 30, "2.5 mm2"), cable("thick", 90, 30, "6 mm2"));
    private static final List<ControlSupply> SUPPLIES =
            List.of(supply("small", 60, 2.5), supply("medium", 100, 5), supply("large", 170, 10));

    private static ControlPowerResult size(boolean together, ControlNode... nodes) {
        return new ControlPowerSizing()
                .size(new ControlPowerRequest(spec(0.2, together), SITE, MAINS, List.of(nodes), SUPPLIES, CABLES));
    }

    @Test
    void oneGatewayByHand() {
        var result = size(true, node("g", "p1", 1, null, 10));
        // 6 W behind 30 m of 0.75 mm²: R = 2 · 26 mΩ/m · 30 m · (1 + 0.00393 · 40)
        double r = 2 * 0.026 * 30 * (1 + 0.00393 * 40);
        double source = 24 * 0.99;
        double v = (source + Math.sqrt(source * source - 4 * 6 * r)) / 2;
        assertThat(result.links().getFirst().item()).isEqualTo("thin");
        assertThat(result.voltages().getFirst().steady().si()).isCloseTo(v, within(1e-9));
        assertThat(result.voltages().getFirst().required().si()).isEqualTo(20.4);
        assertThat(result.supplies().getFirst().item()).isEqualTo("small");
        assertThat(result.supplies().getFirst().worstCurrent().si()).isCloseTo(6 / v, within(1e-9));
        assertThat(result.chains().getFirst().collapseMultiplier())
                .isCloseTo(source * source / (4 * r * 6), within(1e-6));
        assertThat(result.findings()).extracting(Finding::code).containsExactly(FindingCode.CONTROL_OUTPUT_UNPROTECTED);
    }

    /** 45 m, where cables end at 30 m: two in series have twice the resistance of one with its contacts, so both count in the voltage. */
    @Test
    void twoCablesAreJoinedWhereNoneReaches() {
        CableAssembly thin = Copies.with(
                Copies.with(cable("thin", 20, 30, "0.75 mm2"), "connectorResistance", new Resistance(0.01)),
                "coupler",
                "c");
        var coupler = new Accessory("c", "coupler", null, List.of());
        List<CoupledCables> pairs = CoupledCables.of(List.of(thin), id -> coupler);
        var request = new ControlPowerRequest(
                spec(0.2, true), SITE, MAINS, List.of(node("g", "p1", 1, null, 45)), SUPPLIES, List.of(thin));
        var result = new ControlPowerSizing().size(Copies.with(request, "coupled", pairs));

        // R = 2 · (2 · 26 mΩ/m · 30 m · (1 + 0.00393 · 40) + 10 mΩ); V as in oneGatewayByHand
        double r = 2 * (2 * 0.026 * 30 * (1 + 0.00393 * 40) + 0.01);
        double source = 24 * 0.99;
        FeedLink link = result.links().getFirst();
        assertThat(link.item()).isEqualTo("thin");
        assertThat(link.extension()).isEqualTo(new CableExtension("c", "thin"));
        assertThat(requireNonNull(link.resistance()).si()).isCloseTo(r, within(1e-9));
        assertThat(result.voltages().getFirst().steady().si())
                .isCloseTo((source + Math.sqrt(source * source - 4 * 6 * r)) / 2, within(1e-9));
        assertThat(result.findings())
                .extracting(Finding::code, Finding::value, Finding::limit)
                .contains(tuple(FindingCode.CONTROL_CABLES_JOINED, new Length(45), new Length(60)));

        assertThat(new ControlPowerSizing().size(request).links().getFirst().item())
                .isNull();
    }

    @Test
    void inputPowerIsOutputAndHeat() {
        var placed = size(true, node("g", "p1", 1, null, 10, load("x", 0, 20, null)))
                .supplies()
                .getFirst();
        double output = 24 * placed.steadyCurrent().si();
        assertThat(placed.inputPower().si()).isCloseTo(output / 0.9, within(1e-9));
        assertThat(placed.heat().si()).isCloseTo(output / 0.9 - output, within(1e-9));
        assertThat(placed.inputApparentPower().si()).isCloseTo(output / 0.9 / 0.6, within(1e-9));
        assertThat(placed.holdUp().si())
                .isCloseTo(0.1 * 2.5 / placed.steadyCurrent().si(), within(1e-9));
    }

    @Test
    void brakesReleasedTogetherTakeMoreThanOneAtATime() {
        var nodes = new ControlNode[] {
            node("g", "p1", 1, null, 10, load("x", 0, 10, brake(24, 6, 21.6)), load("y", 1, 10, brake(24, 6, 21.6)))
        };
        var together = size(true, nodes);
        var single = size(false, nodes);
        double rise = together.chains().getFirst().worstCurrent().si()
                - single.chains().getFirst().worstCurrent().si();
        // one more brake of 24 W less 6 W at about 24 V
        assertThat(rise).isCloseTo(18.0 / 24, within(0.1));
    }

    @Test
    void heavyBrakesMakeTheCablesClimbUntilEveryBrakeReleases() {
        var result = size(
                true,
                node("a", "p1", 1, null, 20, load("x", 0, 10, brake(24, 6, 21.6))),
                node("b", "p1", 2, "a", 20, load("y", 1, 10, brake(24, 6, 21.6))));
        assertThat(result.links()).extracting(FeedLink::item).contains("middle");
        assertThat(result.worst()).isNotNull();
        assertThat(result.voltages()).allMatch(v -> v.margin().si() >= 0);
        assertThat(result.findings()).noneMatch(f -> f.code().name().equals("CONTROL_VOLTAGE_LOW"));
        assertThat(result.voltages().stream()
                        .filter(v -> v.subject().equals("y"))
                        .findFirst()
                        .orElseThrow()
                        .required()
                        .si())
                .isEqualTo(21.6);
    }

    @Test
    void chainsShareASupplyWhereThatIsCheaper() {
        ControlNode[] nodes = IntStream.range(0, 4)
                .mapToObj(k -> node("g" + k, "p" + k, 1, null, 5, load("x" + k, k, 15, null)))
                .toArray(ControlNode[]::new);
        // 4 · about 0.9 A · 1.2: one medium at 100 beats two small at 120
        var result = size(true, nodes);
        assertThat(result.supplies()).hasSize(1);
        assertThat(result.supplies().getFirst().item()).isEqualTo("medium");
        assertThat(result.supplies().getFirst().chains()).containsExactly("p0", "p1", "p2", "p3");
        assertThat(result.supplies().getFirst().loadShare()).isLessThanOrEqualTo(1);
    }

    @Test
    void manyChainsAreDividedIntoNeighbours() {
        ControlNode[] nodes = IntStream.range(0, 20)
                .mapToObj(k -> node("g" + k, "p" + k, 1, null, 5, load("x" + k, k, 30, null)))
                .toArray(ControlNode[]::new);
        var result = size(true, nodes);
        assertThat(result.supplies()).allMatch(s -> s.loadShare() <= 1);
        assertThat(result.supplies().stream().mapToInt(s -> s.chains().size()).sum())
                .isEqualTo(20);
    }

    @Test
    void temperatureDeratesTheSupply() {
        var hot = new io.axiswright.engine.design.Site(
                ControlParts.celsius(40), ControlParts.celsius(60), SITE.altitude());
        var result = new ControlPowerSizing()
                .size(new ControlPowerRequest(
                        spec(0.2, true), hot, MAINS, List.of(node("g", "p1", 1, null, 10)), SUPPLIES, CABLES));
        // 2.5 %/K over 10 K
        assertThat(result.supplies().getFirst().availableCurrent().si()).isCloseTo(2.5 * 0.75, within(1e-12));
    }

    @Test
    void everyLongerCableLowersOrKeepsEveryVoltage() {
        double before = Double.POSITIVE_INFINITY;
        for (double length = 10; length <= 300; length += 29) {
            var result = new ControlPowerSizing()
                    .size(new ControlPowerRequest(
                            spec(0.2, true),
                            SITE,
                            MAINS,
                            List.of(node("g", "p1", 1, null, 10, load("x", 0, 20, brake(20, 5, 20.4)))),
                            SUPPLIES,
                            List.of(cable("only", 1, length, "10 mm2"))));
            double voltage = result.voltages().getLast().brakePullIn().si();
            assertThat(voltage).isLessThan(before);
            before = voltage;
        }
    }

    @Test
    void nothingToFeedNeedsNothing() {
        var result = size(true);
        assertThat(result.supplies()).isEmpty();
        assertThat(result.findings()).isEmpty();
        assertThat(result.worst()).isNull();
    }

    @Test
    void sameRequestSameAnswer() {
        var nodes = new ControlNode[] {
            node("a", "p1", 1, null, 20, load("x", 0, 10, brake(24, 6, 21.6))), node("b", "p2", 1, null, 20)
        };
        assertThat(size(true, nodes)).isEqualTo(size(true, nodes));
    }

    @Test
    void everyFaultOfARequestIsToldWithItsPlace() {
        assertThatThrownBy(() -> size(
                        true,
                        node("a", "p1", 1, "b", 5, load("x", 0, 5, null)),
                        node("b", "p1", 2, "a", 5, load("x", 0, 5, null)),
                        node("b", "p1", 3, "nowhere", 5),
                        node("c", "p2", 1, "a", 5)))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults())
                                .extracting(Fault::pointer)
                                .contains(
                                        "/nodes/1/loads/0/axis",
                                        "/nodes/2/id",
                                        "/nodes/0/upstream",
                                        "/nodes/2/upstream",
                                        "/nodes/3/upstream"));
    }
}
