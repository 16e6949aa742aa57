package io.axiswright.engine.wiring;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.Cheapest;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Picks the cheapest cable for each join; what none serves is told once for each use, by the longest way. */
final class JoinChoice {

    /** Lengths that differ by less are the same, m. */
    private static final double SAME = 1e-9;

    private final WiringRequest request;
    private final List<WiringPart> parts = new ArrayList<>();
    private final List<JoinedCable> joined = new ArrayList<>();
    private final List<CableRun> runs = new ArrayList<>();
    private final Map<CableUse, List<Join>> unmet = new EnumMap<>(CableUse.class);

    JoinChoice(WiringRequest request) {
        this.request = request;
        request.joins().forEach(this::choose);
    }

    private void choose(Join join) {
        Optional<CableAssembly> cable =
                ofUse(join.use()).filter(c -> serves(c, join)).min(order(join));
        if (cable.isEmpty()) {
            unmet.computeIfAbsent(join.use(), _ -> new ArrayList<>()).add(join);
            return;
        }
        CableAssembly chosen = cable.get();
        parts.add(new WiringPart(chosen.id(), join.asker(), join.reason(), join.pointer(), false));
        joined.add(new JoinedCable(chosen.id(), join.from(), join.to()));
        runs.add(new CableRun(
                join.asker(),
                chosen.id(),
                chosen.outerDiameter(),
                chosen.endList(),
                join.enclosures(),
                join.pointer()));
    }

    private static Comparator<CableAssembly> order(Join join) {
        return join.route() == null
                ? Comparator.<CableAssembly>comparingDouble(c -> c.length().si())
                        .thenComparing(Cheapest.FIRST)
                : Cheapest.FIRST::compare;
    }

    private static boolean serves(CableAssembly cable, Join join) {
        double length = cable.length().si();
        return (join.route() == null || length + SAME >= join.route().si())
                && (join.longest() == null || length <= join.longest().si() + SAME)
                && (join.voltage() == null
                        || cable.ratedVoltage() == null
                        || cable.ratedVoltage().si() >= join.voltage().si())
                && (join.current() == null
                        || cable.ratedCurrent() == null
                        || cable.ratedCurrent().si() >= join.current().si());
    }

    private Stream<CableAssembly> ofUse(CableUse use) {
        return request.cables().stream().filter(cable -> cable.use() == use);
    }

    List<WiringPart> parts() {
        return parts;
    }

    List<JoinedCable> joined() {
        return joined;
    }

    List<CableRun> runs() {
        return runs;
    }

    List<Finding> findings() {
        return unmet.entrySet().stream()
                .map(entry -> finding(entry.getKey(), entry.getValue()))
                .toList();
    }

    private Finding finding(CableUse use, List<Join> joins) {
        double longest = joins.stream()
                .mapToDouble(join -> join.route() == null ? 0 : join.route().si())
                .max()
                .orElse(0);
        double stocked =
                ofUse(use).mapToDouble(cable -> cable.length().si()).max().orElse(0);
        return code(use)
                .at(
                        joins.getFirst().asker(),
                        request.source().list("cableAssemblies", request.cables()),
                        "completeness",
                        new Length(longest),
                        new Length(stocked));
    }

    private static FindingCode code(CableUse use) {
        return switch (use) {
            case BUS_LINK -> FindingCode.BILL_BUS_LINK_NONE;
            case BRAKING_RESISTOR -> FindingCode.BILL_RESISTOR_CABLE_NONE;
            case STOP_SIGNAL -> FindingCode.BILL_STOP_CABLE_NONE;
            case HOST, TRUNK, SPUR, CONTROL_SUPPLY ->
                throw new IllegalArgumentException(use + " cables are chosen with the layout");
        };
    }
}
