package io.axiswright.engine.standard;

import io.axiswright.engine.design.SafeguardStandard;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One rule of ISO 13855 for the distance of a safeguard, S = K·T + reach. Lengths in m, speeds in m/s.
 *
 * @param nearSpeed approach speed K tried first; none where there is but one
 * @param nearLimit distance up to which that holds; beyond it the other speed does, and S is not below this limit
 * @param speed approach speed K; unknown if empty
 * @param reach how far one reaches before being noticed; unknown if empty
 * @param reachPerCapability how much farther per detection capability above the offset
 * @param capabilityOffset that offset
 * @param reachPerHeight how much farther per height of the detection zone
 * @param leastReach the least reach
 * @param leastDistance the least distance
 * @param heightPerCapability how high the zone must be per detection capability above the free one; no rule if empty
 * @param capabilityFree detection capability up to which the zone may lie on the floor
 * @param source where the rule stands
 */
public record SeparationRule(
        OptionalDouble nearSpeed,
        double nearLimit,
        OptionalDouble speed,
        OptionalDouble reach,
        double reachPerCapability,
        double capabilityOffset,
        double reachPerHeight,
        double leastReach,
        double leastDistance,
        OptionalDouble heightPerCapability,
        double capabilityFree,
        Source source) {

    private static final List<TableRow> ROWS = TableFile.rows("iso-13855");

    /**
     * The rule of an edition for a kind of detection.
     *
     * @param detection the kind as the table names it
     * @param capability its detection capability, m; 0 where it has none
     * @throws IllegalArgumentException if the edition has no rule for it
     */
    public static SeparationRule of(SafeguardStandard standard, String detection, double capability) {
        return ROWS.stream()
                .filter(row -> row.text("edition").equals(standard.name()))
                .filter(row -> row.text("detection").equals(detection))
                .filter(row ->
                        capability > or(row, "capability_above", -1) && capability <= row.upTo("capability_up_to"))
                .map(SeparationRule::of)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(standard + " " + detection + " " + capability));
    }

    private static SeparationRule of(TableRow row) {
        return new SeparationRule(
                row.optionalNumber("near_speed"),
                or(row, "near_limit", 0),
                row.optionalNumber("speed"),
                row.optionalNumber("reach"),
                or(row, "reach_per_capability", 0),
                or(row, "capability_offset", 0),
                or(row, "reach_per_height", 0),
                or(row, "least_reach", 0),
                or(row, "least_distance", 0),
                row.optionalNumber("height_per_capability"),
                or(row, "capability_free", 0),
                row.sourced(0).source());
    }

    private static double or(TableRow row, String column, double otherwise) {
        return row.optionalNumber(column).orElse(otherwise);
    }

    /** The reach for a detection capability and a height, m; what is stated comes before what the rule says. */
    public double reach(OptionalDouble stated, double capability, double height) {
        if (stated.isPresent()) {
            return stated.getAsDouble();
        }
        double further = reachPerCapability * Math.max(0, capability - capabilityOffset) + reachPerHeight * height;
        return Math.max(leastReach, reach.orElse(0) + further);
    }
}
