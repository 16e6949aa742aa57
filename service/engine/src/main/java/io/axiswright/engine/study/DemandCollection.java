package io.axiswright.engine.study;

import io.axiswright.engine.bill.Demand;
import io.axiswright.engine.braking.GroupBraking;
import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.controlpower.ChosenBuffer;
import io.axiswright.engine.controlpower.PlacedControlSupply;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.MountingKind;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.mounting.AxisMounting;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.Feeder;
import io.axiswright.engine.supply.TransformerNeed;
import io.axiswright.engine.topology.PlacedGateway;
import io.axiswright.engine.wiring.WiringPart;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Everything the disciplines chose, as demands on the bill; what the items need beside them the bill finds itself. */
final class DemandCollection {

    private final StudyRun run;
    private final List<Demand> demands = new ArrayList<>();
    private final Map<String, AxisMounting> mountings = new HashMap<>();

    DemandCollection(StudyRun run) {
        this.run = run;
    }

    List<Demand> demands() {
        run.mounting().axes().forEach(mounting -> mountings.put(mounting.axis(), mounting));
        List<Axis> axes = run.request().design().axes();
        for (int k = 0; k < axes.size(); k++) {
            addAxis("/design/axes/" + k, axes.get(k), run.duty().axes().get(k));
        }
        run.topology().gateways().forEach(this::addGateway);
        addControlPower();
        for (GroupBraking group : run.braking().groups()) {
            int count = group.chosen() == null ? 0 : group.chosen().count();
            for (int unit = 0; unit < count; unit++) {
                add(group.brakingUnit(), "DC bus " + group.id(), "burns off returned energy", "/design/axes");
            }
        }
        addSupply();
        run.wiring().parts().forEach(this::addWiring);
        return List.copyOf(demands);
    }

    private void addAxis(String pointer, Axis axis, AxisDuty duty) {
        String asker = asker(axis);
        List<DemandCondition> conditions = conditions(axis, duty);
        add(duty.driveUnit(), asker, "moves the axis", pointer, conditions);
        add(duty.holdingBrake(), asker, "holds the load at rest", pointer, conditions);
        add(duty.gearUnit(), asker, "gears the drive unit down to the axis", pointer, conditions);
        add(duty.ventilationKit(), asker, "cools the drive unit to hold its duty", pointer, conditions);
        AxisMounting mounting = mountings.get(axis.id());
        if (mounting != null) {
            add(mounting.footKit(), asker, "carries the drive unit on feet", pointer, conditions);
            add(mounting.fasteningPart(), asker, "joins the shaft to the hub", pointer, conditions);
        }
    }

    /** What an axis is called where it asks. */
    static String asker(Axis axis) {
        return "axis " + axis.id();
    }

    /** What a branch circuit is called where it asks. */
    static String asker(BranchCircuit circuit) {
        return "circuit " + circuit.id();
    }

    /** Whether the drive unit of an axis stands on feet. */
    static boolean onFeet(Axis axis) {
        return axis.mounting() != null && axis.mounting().kind() == MountingKind.FOOT;
    }

    /** The conditions of needs that an axis meets. */
    static List<DemandCondition> conditions(Axis axis, AxisDuty duty) {
        List<DemandCondition> conditions = new ArrayList<>();
        if (onFeet(axis)) {
            conditions.add(DemandCondition.FOOT_MOUNTED);
        }
        if (duty.ventilationKit() != null) {
            conditions.add(DemandCondition.FORCED_VENTILATION);
        }
        conditions.add(duty.holdingBrake() != null ? DemandCondition.HOLDING_BRAKE : DemandCondition.NO_HOLDING_BRAKE);
        if (axis.drive().keepAlive()) {
            conditions.add(DemandCondition.KEEP_ALIVE);
        }
        return List.copyOf(conditions);
    }

    private void addGateway(PlacedGateway gateway) {
        String asker = "gateway " + gateway.id();
        add(gateway.gatewayType(), asker, "joins drive units to the host", "/design/network");
        addCable(
                gateway.linkCable(),
                gateway.linkExtension(),
                asker,
                gateway.upstream() == null ? "joins it to the host" : "joins it to gateway " + gateway.upstream(),
                "/design/network");
        gateway.spurs()
                .forEach(spur -> addCable(
                        spur.cable(),
                        spur.extension(),
                        "axis " + spur.axis(),
                        "joins it to gateway " + gateway.id(),
                        "/design/network"));
    }

    private void addCable(
            @Nullable String item, @Nullable CableExtension extension, String asker, String reason, String pointer) {
        add(item, asker, reason, pointer);
        if (extension != null) {
            add(extension.cable(), asker, reason, pointer);
            add(extension.coupler(), asker, CoupledCables.WHY, pointer);
        }
    }

    private void addControlPower() {
        run.controlPower().supplies().forEach(this::addControlSupply);
        run.controlPower()
                .circuits()
                .forEach(circuit -> add(
                        circuit.item(),
                        "chain " + circuit.chain(),
                        "protects its 24 V output circuit",
                        "/design/controlPower"));
        run.controlPower()
                .links()
                .forEach(link -> addCable(
                        link.item(),
                        link.extension(),
                        "gateway " + link.node(),
                        "feeds it with 24 V",
                        "/design/controlPower"));
    }

    private void addControlSupply(PlacedControlSupply supply) {
        String asker = "control supply " + supply.id();
        for (int unit = 0; unit < supply.count(); unit++) {
            add(supply.item(), asker, "feeds 24 V", "/design/controlPower");
        }
        ChosenBuffer buffer = supply.buffer();
        for (int unit = 0; buffer != null && unit < buffer.count(); unit++) {
            add(buffer.item(), asker, "feeds on after mains is lost", "/design/controlPower");
        }
    }

    private void addSupply() {
        for (BranchCircuit circuit : run.supply().circuits()) {
            add(circuit.device(), asker(circuit), "protects the branch circuit", "/design/installation");
        }
        add(run.supply().feeder().device(), "feeder", "protects the feeder", "/design/installation");
        for (TransformerNeed transformer : run.supply().transformers()) {
            Feeder behind = transformer.feeder();
            if (behind != null) {
                add(
                        behind.device(),
                        "transformer " + transformer.id(),
                        "protects its secondary",
                        "/design/installation");
            }
        }
        run.conductoring().cables().forEach(this::addPowerCable);
    }

    /** From a reel each piece is cut by itself, so each is a demand of its own. */
    private void addPowerCable(CircuitConductoring.PowerCable cable) {
        String asker = "circuit " + cable.circuit();
        if (run.stock().get(BulkCable.class, cable.item()).reelLength() == null) {
            addLength(cable.item(), cable.length(), asker, "brings the power", "/design/installation");
        } else {
            for (CircuitConductoring.Piece piece : cable.pieces()) {
                addLength(cable.item(), piece.length(), asker, "brings the power to " + piece.load(), piece.pointer());
            }
        }
    }

    private void addLength(String item, double length, String asker, String reason, String pointer) {
        demands.add(new Demand(item, wholeCentimetres(length), NeedKind.REQUIRED, asker, reason, pointer, List.of()));
    }

    /** Tools are offered, for the fitter may have them. */
    private void addWiring(WiringPart part) {
        demands.add(new Demand(
                part.item(),
                BigDecimal.ONE,
                part.tool() ? NeedKind.OPTIONAL : NeedKind.REQUIRED,
                part.asker(),
                part.reason(),
                part.pointer(),
                List.of()));
    }

    /** The next whole centimetre, m; what a length is over by rounding alone, below a nanometre, does not count. */
    private static BigDecimal wholeCentimetres(double length) {
        return new BigDecimal(length).setScale(9, RoundingMode.HALF_UP).setScale(2, RoundingMode.CEILING);
    }

    private void add(@Nullable String item, String asker, String reason, String pointer) {
        add(item, asker, reason, pointer, List.of());
    }

    private void add(
            @Nullable String item, String asker, String reason, String pointer, List<DemandCondition> conditions) {
        if (item != null) {
            demands.add(new Demand(item, BigDecimal.ONE, NeedKind.REQUIRED, asker, reason, pointer, conditions));
        }
    }
}
