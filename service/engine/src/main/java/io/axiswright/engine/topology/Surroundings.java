package io.axiswright.engine.topology;

import java.util.Comparator;
import java.util.function.IntPredicate;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/**
 * What is near what, by cost of the cable between, out of reach left out: a search that only looks around itself takes the
 * same work for every axis, however large the machine.
 */
final class Surroundings {

    /** Axes by which places without a trunk cable between them are told to be near each other. */
    private static final int COMMON_AXES = 8;

    private final int[][] placesOfAxis;
    private final int[][] axesOfPlace;
    private final int[][] placesOfPlace;

    Surroundings(LayoutModel model) {
        LinkTable spur = model.spur();
        LinkTable trunk = model.trunk();
        boolean couples = model.couples();
        int axes = model.axes().size();
        int places = model.places();
        placesOfAxis = new int[axes][];
        for (int row = 0; row < axes; row++) {
            int axis = row;
            placesOfAxis[axis] =
                    nearest(places, p -> spur.reaches(axis, p), p -> spur.cost()[axis][p], p -> spur.length()[axis][p]);
        }
        axesOfPlace = new int[places][];
        placesOfPlace = new int[places][];
        for (int column = 0; column < places; column++) {
            int place = column;
            axesOfPlace[place] = nearest(
                    axes, a -> spur.reaches(a, place), a -> spur.cost()[a][place], a -> spur.length()[a][place]);
            placesOfPlace[place] = nearest(
                    places,
                    p -> true,
                    p -> couples && p == place ? 0 : trunk.cost()[place][p],
                    p -> throughAxes(axesOfPlace[place], spur, p));
        }
    }

    /** The places an axis can be reached from, nearest first; not to be changed. */
    int[] placesOfAxis(int axis) {
        return placesOfAxis[axis];
    }

    /** The axes that can be reached from a place, nearest first; not to be changed. */
    int[] axesOfPlace(int place) {
        return axesOfPlace[place];
    }

    /** All places as seen from one, itself among them: by the trunk cable, those out of its reach last; not to be changed. */
    int[] placesOfPlace(int place) {
        return placesOfPlace[place];
    }

    /** How near a place is to the axes nearest to another. */
    private static long throughAxes(int[] axes, LinkTable spur, int place) {
        long least = LinkTable.FAR;
        for (int k = 0; k < Math.min(axes.length, COMMON_AXES); k++) {
            least = Math.min(least, spur.cost()[axes[k]][place]);
        }
        return least;
    }

    private static int[] nearest(int count, IntPredicate reached, IntToLongFunction cost, IntToLongFunction length) {
        return IntStream.range(0, count)
                .filter(reached)
                .boxed()
                .sorted(Comparator.<Integer>comparingLong(cost::applyAsLong).thenComparingLong(length::applyAsLong))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
