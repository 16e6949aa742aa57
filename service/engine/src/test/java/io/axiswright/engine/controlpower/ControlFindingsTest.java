package io.axiswright.engine.controlpower;

import static io.axiswright.engine.controlpower.ControlParts.MAINS;
import static io.axiswright.engine.controlpower.ControlParts.SITE;
import static io.axiswright.engine.controlpower.ControlParts.brake;
import static io.axiswright.engine.controlpower.ControlParts.cable;
import static io.axiswright.engine.controlpower.ControlParts.drive;
import static io.axiswright.engine.controlpower.ControlParts.load;
import static io.axiswright.engine.controlpower.ControlParts.node;
import static io.axiswright.engine.controlpower.ControlParts.spec;
import static io.axiswright.engine.controlpower.ControlParts.spur;
import static io.axiswright.engine.controlpower.ControlParts.supply;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import java.util.List;
import org.junit.jupiter.api.Test;

class ControlFindingsTest {

    private static final ControlSupply LARGE = supply("large", 100, 40);
    private static final CableAssembly CABLE = cable("cable", 10, 20, "2.5 mm2");

    private static Finding only(FindingCode code, ControlSupply supply, CableAssembly cable, ControlNode... nodes) {
        var result = new ControlPowerSizing()
                .size(new ControlPowerRequest(
                        spec(0.2, true), SITE, MAINS, List.of(nodes), List.of(supply), List.of(cable)));
        assertThat(result.findings()).extracting(Finding::code).contains(code);
        return result.findings().stream()
                .filter(f -> f.code() == code)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void voltageBelowWhatABrakeNeeds() {
        var finding = only(
                FindingCode.CONTROL_VOLTAGE_LOW,
                LARGE,
                CABLE,
                node("g", "p", 1, null, 20, load("x", 3, 10, brake(60, 10, 23))));
        assertThat(finding.pointer()).isEqualTo("/design/axes/3");
        assertThat(finding.limit()).isEqualTo(new io.axiswright.engine.quantity.Voltage(23));
    }

    @Test
    void voltageBelowTheBandButNotBelowTheItem() {
        var thin = cable("thin", 10, 60, "0.75 mm2");
        only(
                FindingCode.CONTROL_VOLTAGE_BELOW_BAND,
                LARGE,
                thin,
                new ControlNode("g", ControlParts.gateway(22, 10, 20), "p", 1, null, new Length(60), List.of()));
    }

    @Test
    void outputAboveTheBand() {
        only(
                FindingCode.CONTROL_VOLTAGE_ABOVE_BAND,
                supply("s", 1, 40, Feed.ONE_PHASE, 230, 30, 0.1),
                CABLE,
                node("g", "p", 1, null, 5));
    }

    @Test
    void collapseTellsTheLoadThatCouldBeFed() {
        var thin = cable("thin", 10, 300, "0.5 mm2");
        var finding = only(
                FindingCode.CONTROL_CHAIN_COLLAPSE, LARGE, thin, node("g", "p", 1, null, 5, load("x", 0, 60, null)));
        assertThat(finding.value())
                .isInstanceOfSatisfying(
                        Ratio.class, multiple -> assertThat(multiple.si()).isBetween(0.01, 0.99));
    }

    @Test
    void collapseOnASpurLeavesTheRestOfTheAnswer() {
        var thin = new ControlLoad("x", 0, drive(3000, 18, true), null, spur("0.5 mm2"), false);
        only(FindingCode.CONTROL_CHAIN_COLLAPSE, LARGE, CABLE, node("g", "p", 1, null, 5, thin));
    }

    @Test
    void noCableLongEnough() {
        var finding = only(FindingCode.CONTROL_CABLE_NONE, LARGE, CABLE, node("g", "p", 1, null, 25));
        assertThat(finding.value()).isEqualTo(new Length(25));
        assertThat(finding.limit()).isEqualTo(new Length(20));
    }

    @Test
    void noSupplyForTheMains() {
        only(
                FindingCode.CONTROL_SUPPLY_NONE,
                supply("s", 1, 40, Feed.DC_BUS, 560, 24, 0.1),
                CABLE,
                node("g", "p", 1, null, 5));
    }

    @Test
    void supplyOfAnotherVoltage() {
        only(
                FindingCode.CONTROL_SUPPLY_MAINS_VOLTAGE,
                supply("s", 1, 40, Feed.ONE_PHASE, 120, 24, 0.1),
                CABLE,
                node("g", "p", 1, null, 5));
    }

    @Test
    void supplyTooSmall() {
        only(
                FindingCode.CONTROL_SUPPLY_OVERLOADED,
                supply("s", 1, 1),
                CABLE,
                node("g", "p", 1, null, 5, load("x", 0, 30, null)));
    }

    /** 6 W from 19.2 V and 60 W from 8 V: 60/8 = 7.5 A while the output passes 8 V, though 3 A feed it at 24 V. */
    @Test
    void startLock() {
        var greedy = new ControlLoad("x", 0, drive(60, 8, true), null, spur("1 mm2"), false);
        var finding =
                only(FindingCode.CONTROL_START_LOCK, supply("s", 1, 5), CABLE, node("g", "p", 1, null, 5, greedy));
        assertThat(finding.value()).isEqualTo(new io.axiswright.engine.quantity.Current(7.5));
    }

    @Test
    void moreCurrentThanAGatewayPasses() {
        only(
                FindingCode.CONTROL_PASS_THROUGH_CURRENT,
                LARGE,
                CABLE,
                new ControlNode(
                        "g",
                        ControlParts.gateway(10, 18, 1),
                        "p",
                        1,
                        null,
                        new Length(5),
                        List.of(load("x", 0, 30, null))));
    }

    @Test
    void spurWithoutPower() {
        var bare = new ControlLoad("x", 7, drive(10, 18, true), null, spur(null), false);
        assertThat(only(FindingCode.CONTROL_SPUR_WITHOUT_POWER, LARGE, CABLE, node("g", "p", 1, null, 5, bare))
                        .pointer())
                .isEqualTo("/design/axes/7");
    }

    @Test
    void keepAlive() {
        var kept = new ControlLoad("x", 0, drive(10, 18, false), null, spur("1 mm2"), true);
        only(FindingCode.CONTROL_KEEP_ALIVE_ABSENT, LARGE, CABLE, node("g", "p", 1, null, 5, kept));
        only(FindingCode.CONTROL_KEEP_ALIVE_HOLD_UP, LARGE, CABLE, node("g", "p", 1, null, 5, kept));
    }

    @Test
    void shortHoldUp() {
        only(
                FindingCode.CONTROL_HOLD_UP_SHORT,
                supply("s", 1, 1.2, Feed.ONE_PHASE, 230, 24, 0.005),
                CABLE,
                node("g", "p", 1, null, 5, load("x", 0, 14, null)));
    }

    @Test
    void brakesComeWithAWordOfCare() {
        only(
                FindingCode.CONTROL_BRAKE_RELEASE,
                LARGE,
                CABLE,
                node("g", "p", 1, null, 5, load("x", 0, 10, brake(20, 5, 20))));
    }
}
