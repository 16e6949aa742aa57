package io.axiswright.engine.wiring;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.Cheapest;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

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
        if (cable.isPresent()) {
            lay(join, cable.get(), join.from(), join.to(), false, join.enclosures());
            return;
        }
        Optional<Pair> pair = pairs(join).min(Pair.CHEAPEST);
        if (pair.isPresent()) {
            lay(join, pair.get());
        } else {
            unmet.computeIfAbsent(join.use(), _ -> new ArrayList<>()).add(join);
        }
    }

    private void lay(
            Join join, CableAssembly cable, String from, String to, boolean toCoupler, List<String> enclosures) {
        parts.add(new WiringPart(cable.id(), join.asker(), join.reason(), join.pointer(), false));
        joined.add(new JoinedCable(cable.id(), from, to, toCoupler));
        runs.add(new CableRun(
                join.asker(), cable.id(), cable.outerDiameter(), cable.endList(), enclosures, join.pointer()));
    }

    /** The first cable goes through the wall where it begins, the other through that where it ends. */
    private void lay(Join join, Pair pair) {
        String coupler = "coupler between " + join.from() + " and " + join.to();
        List<String> walls = join.enclosures();
        lay(join, pair.one(), join.from(), coupler, true, walls.subList(0, Math.min(1, walls.size())));
        lay(join, pair.other(), coupler, join.to(), false, walls.subList(Math.min(1, walls.size()), walls.size()));
        parts.add(new WiringPart(
                pair.coupler(),
                join.asker(),
                "joins two cables on a way no single one reaches",
                join.pointer(),
                false));
        remarks.add(FindingCode.BILL_CABLES_JOINED.at(
                join.asker(), join.pointer(), PRACTICE, join.route(), new Length(pair.length())));
    }

    /** Two cables that a coupler may join, both fit for what is on them, together long enough. */
    private Stream<Pair> pairs(Join join) {
        if (join.route() == null) {
            return Stream.empty();
        }
        List<CableAssembly> cables = ofUse(join.use())
                .filter(c -> c.coupler() != null && bears(c, join))
                .toList();
        return cables.stream()
                .flatMap(one -> cables.stream().map(other -> new Pair(one, other)))
                .filter(pair -> pair.coupler().equals(pair.other().coupler()) && reaches(pair.length(), join));
    }

    /** Two cables joined. */
    private record Pair(CableAssembly one, CableAssembly other) {

        /** By price, unknown ones last; then the shorter; then by ids. */
        static final Comparator<Pair> CHEAPEST = Comparator.comparing(
                        Pair::price, Comparator.<@Nullable BigDecimal>nullsLast(Comparator.naturalOrder()))
                .thenComparing(Pair::length)
                .thenComparing(pair -> pair.one.id())
                .thenComparing(pair -> pair.other.id());

        String coupler() {
            return Objects.requireNonNull(one.coupler());
        }

        double length() {
            return one.length().si() + other.length().si();
        }

        private @Nullable BigDecimal price() {
            Money first = one.price();
            Money second = other.price();
            return first == null || second == null ? null : first.amount().add(second.amount());
        }
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
