package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Smallest protective conductors beside line conductors of the same material. */
public final class ProtectiveConductors {

    private static final double MM2 = 1e6;
    private static final StepTable<ConductorSize> NFPA_79 = byDevice("nfpa-79-8-2-2-3");
    private static final StepTable<ConductorSize> NFPA_70 = byDevice("nec-250-122");
    private static final StepTable<ConductorSize> NFPA_70_ALUMINIUM = byDevice("nec-250-122-aluminium");
    private static final List<TableRow> TABLE_54_2 = TableFile.rows("iec-60364-5-54-table-54-2");
    private static final StepTable<Ratio> SHARE =
            StepTable.of(TABLE_54_2, r -> true, "line_up_to", r -> Optional.of(new Ratio(r.number("share"))));
    private static final StepTable<Ratio> AT_LEAST =
            StepTable.of(TABLE_54_2, r -> true, "line_up_to", r -> Optional.of(new Ratio(r.number("at_least"))));

    /**
     * Where a protective conductor that carries current in normal operation must be reinforced.
     *
     * @param above the current above which it must
     * @param size its smallest size then
     */
    public record Reinforcement(Current above, ConductorSize size) {}

    private record Case(CodeBasis basis, ConductorMaterial material) {}

    private static final Map<Case, Sourced<Reinforcement>> REINFORCEMENT = TableFile.rows("protective-leakage").stream()
            .collect(Collectors.toMap(
                    r -> new Case(r.word("basis", CodeBasis.class), r.word("material", ConductorMaterial.class)),
                    r -> r.sourced(new Reinforcement(new Current(r.number("above")), r.size()))));

    /** A size of IEC 60228 with its cross-section in mm². */
    private record Step(ConductorSize size, double section) {}

    private static final List<Step> STEPS = IecConductors.sizes(ConductorMaterial.COPPER).stream()
            .map(size -> new Step(size, size.area().si() * MM2))
            .toList();

    private ProtectiveConductors() {}

    /** The rule on protective-conductor currents (IEC 60204-1 8.2.6). */
    public static Sourced<Reinforcement> reinforcement(CodeBasis basis, ConductorMaterial material) {
        return Objects.requireNonNull(REINFORCEMENT.get(new Case(basis, material)));
    }

    /**
     * By the rating of the device ahead: copper by NFPA 79 Table 8.2.2.3, above its end NFPA 70 Table 250.122; aluminium by the
     * latter.
     */
    public static Optional<Sourced<ConductorSize>> northAmerican(ConductorMaterial material, Current deviceRating) {
        return switch (material) {
            case COPPER -> NFPA_79.at(deviceRating.si()).or(() -> NFPA_70.at(deviceRating.si()));
            case ALUMINIUM -> NFPA_70_ALUMINIUM.at(deviceRating.si());
        };
    }

    /** The largest device {@link #northAmerican} has a row for. */
    public static Current largestDevice() {
        return new Current(NFPA_70.end());
    }

    /** By the line conductor: IEC 60364-5-54 Table 54.2, rounded up to the next size of IEC 60228. */
    public static Optional<Sourced<ConductorSize>> iec(ConductorSize line) {
        double section = line.area().si() * MM2;
        return SHARE.at(section)
                .flatMap(share -> AT_LEAST.at(section).flatMap(atLeast -> {
                    double needed = Math.max(
                            share.value().si() * section, atLeast.value().si());
                    return STEPS.stream()
                            .filter(step -> Limits.within(needed, step.section()))
                            .findFirst()
                            .map(step -> new Sourced<>(step.size(), share.source()));
                }));
    }

    private static StepTable<ConductorSize> byDevice(String file) {
        return StepTable.of(TableFile.rows(file), r -> true, "device_up_to", r -> Optional.of(r.size()));
    }
}
