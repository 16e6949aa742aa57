package io.axiswright.engine.wiring;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.Cheapest;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.LaidCable;
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

/** Picks the cheapest cable for each join, or the cheapest two that may be joined; what none serves is told once for each use, by the longest way. */
final class JoinChoice {

    private static final String PRACTICE = "common practice, no source";

    /** Lengths that differ by less are the same, m. */
    private static final double SAME = 1e-9;

    private final WiringRequest request;
    private final List<WiringPart> parts = new ArrayList<>();
    private final List<JoinedCable> joined = new ArrayList<>();
    private final List<CableRun> runs = new ArrayList<>();
    private final List<Finding> remarks = new ArrayList<>();
    private final Map<CableUse, List<Join>> unmet = new EnumMap<>(CableUse.class);

    JoinChoice(WiringRequest request) {
        this.request = request;
        request.joins().forEach(this::choose);
    }

    private void choose(Join join) {
        Optional<CableAssembly> cable =
                ofUse(join.use()).filter(c -> serves(c, join)).min(order(join));
        cable.<LaidCable>map(c -> c)
                .or(() -> pair(join))
                .ifPresentOrElse(
                        laid -> lay(join, laid),
                        () -> unmet.computeIfAbsent(join.use(), _ -> new ArrayList<>())
                                .add(join));
    }

    private void lay(Join join, LaidCable laid) {
        runs.addAll(CableRun.along(join.asker(), laid, join.enclosures(), join.pointer()));
        laid.pieces().forEach(cable -> buy(join, cable, join.reason()));
        if (laid instanceof CoupledCables pair) {
            String between = "coupler between " + join.from() + " and " + join.to();
            joined.add(new JoinedCable(pair.cable().id(), join.from(), between, true));
            joined.add(new JoinedCable(pair.second().id(), between, join.to(), false));
            buy(join, pair.coupler(), CoupledCables.WHY);
            remarks.add(FindingCode.BILL_CABLES_JOINED.at(
                    join.asker(), join.pointer(), PRACTICE, join.route(), pair.length()));
        } else {
            joined.add(new JoinedCable(laid.pieces().getFirst().id(), join.from(), join.to(), false));
        }
    }

    private void buy(Join join, Item item, String reason) {
        parts.add(new WiringPart(item.id(), join.asker(), reason, join.pointer(), false));
    }

    /** The cheapest two cables that a coupler may join, both fit for what is on them, together long enough. */
    private Optional<LaidCable> pair(Join join) {
        return request.coupled().stream()
                .filter(pair -> pair.use() == join.use()
                        && join.route() != null
                        && reaches(pair.length().si(), join)
                        && pair.pieces().stream().allMatch(cable -> bears(cable, join)))
                .<LaidCable>map(pair -> pair)
                .findFirst();
    }

    private static Comparator<CableAssembly> order(Join join) {
        return join.route() == null
                ? Comparator.<CableAssembly>comparingDouble(c -> c.length().si())
                        .thenComparing(Cheapest.FIRST)
                : Cheapest.FIRST::compare;
    }

    private static boolean serves(CableAssembly cable, Join join) {
        return reaches(cable.length().si(), join) && bears(cable, join);
    }

    private static boolean reaches(double length, Join join) {
        return (join.route() == null || length + SAME >= join.route().si())
                && (join.longest() == null || length <= join.longest().si() + SAME);
    }

    private static boolean bears(CableAssembly cable, Join join) {
        return (join.voltage() == null
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
        return Stream.concat(
                        unmet.entrySet().stream().map(entry -> finding(entry.getKey(), entry.getValue())),
                        remarks.stream())
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
