package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.ShaftBearing;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.ShaftLoad;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * What a mechanism does to the shaft of its motor by pulling at it from the side, and to the bearing at the shaft's end.
 *
 * @param radialForce the largest radial force over the cycle and its controlled stops
 * @param distance where it acts, from the shoulder of the shaft
 * @param permittedForce what the shaft stands there; absent if the catalogue does not say
 * @param meanForce cubic mean of the radial force over all turns of the cycle; 0 if it does not turn
 * @param turnsPerCycle turns of the shaft in a cycle, to and fro
 * @param equivalentLoad equivalent dynamic load of the bearing next to the force (ISO 281): the mean force with the lever by
 *     which it loads that bearing; absent if the catalogue lacks the data of the bearings
 * @param bearingLife the basic rating life L10h that nine of ten such bearings reach at this cycle (ISO 281); stated up to
 *     3.2e12 s; absent if the catalogue lacks the data of the bearings
 */
public record ShaftFigures(
        Force radialForce,
        Length distance,
        @Nullable Force permittedForce,
        Force meanForce,
        double turnsPerCycle,
        @Nullable Force equivalentLoad,
        @Nullable Time bearingLife) {

    /** A life in excess of this is no number that anybody needs: 100 000 years, s. */
    private static final double LONGEST_LIFE = 3.2e12;

    /** Of an axis with its gear unit among its gears; none where nothing pulls at the shaft. */
    static @Nullable ShaftFigures of(Axis axis, AxisLoad load, DriveUnit unit, double hardestPull) {
        RadialForce force = RadialForce.of(axis, hardestPull);
        if (force == null) {
            return null;
        }
        ShaftBearing bearing = unit.shaftBearing();
        double distance = distance(axis.shaftLoad(), unit);
        BearingLife wear = BearingLife.of(load.pieces(), force);
        Force equivalent = bearing == null ? null : equivalent(bearing, distance, wear);
        return new ShaftFigures(
                new Force(force.largest(hardestPull)),
                new Length(distance),
                bearing == null ? null : permitted(bearing, distance, unit),
                new Force(wear.meanForce()),
                wear.turns(),
                equivalent,
                bearing == null || equivalent == null ? null : life(bearing, equivalent, wear, load.period()));
    }

    private static double distance(@Nullable ShaftLoad stated, DriveUnit unit) {
        return stated == null || stated.distance() == null
                ? unit.shaftLength().si() / 2
                : stated.distance().si();
    }

    /** Farther out than the middle it stands less, as the moment about the shoulder must not grow. */
    private static @Nullable Force permitted(ShaftBearing bearing, double distance, DriveUnit unit) {
        Force middle = bearing.permittedRadialLoad();
        double half = unit.shaftLength().si() / 2;
        return middle == null ? null : new Force(middle.si() * Math.min(1, half / Math.max(half, distance)));
    }

    private static @Nullable Force equivalent(ShaftBearing bearing, double distance, BearingLife wear) {
        Length spacing = bearing.bearingSpacing();
        Length near = bearing.bearingDistance();
        return bearing.dynamicLoadRating() == null || spacing == null || near == null
                ? null
                : new Force(BearingLife.lever(spacing.si(), near.si() + distance) * wear.meanForce());
    }

    private static @Nullable Time life(ShaftBearing bearing, Force equivalent, BearingLife wear, double period) {
        Force rating = bearing.dynamicLoadRating();
        if (rating == null) {
            return null;
        }
        double turns = BearingLife.lifeTurns(rating.si(), equivalent.si());
        return new Time(wear.turns() == 0 ? LONGEST_LIFE : Math.min(LONGEST_LIFE, turns / wear.turns() * period));
    }
}
