package io.axiswright.engine.numeric;

import java.util.Comparator;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * The highest value of a function of two variables over many rectangles, found with certainty by branch and bound: rectangles
 * whose bound is above the best value found are quartered until none is left that exceeds it by more than the tolerance.
 *
 * @param part the number of the rectangle
 * @param x where, the first variable
 * @param y the second
 * @param value the value there
 * @param bound no place's value is above this
 * @param evaluations how many places were worked out
 */
public record WorstPlace(int part, double x, double y, double value, double bound, int evaluations) {

    /** What is to be as high as possible. */
    public interface Objective {

        /** The value at a place inside a rectangle; not negative. */
        double value(int part, double x, double y);

        /** What no value exceeds on the rectangle of those half widths around a place with that value. */
        double bound(int part, double x, double y, double halfX, double halfY, double value);
    }

    private record Rectangle(int part, double x, double y, double halfX, double halfY, double bound) {}

    /**
     * Searches.
     *
     * @param from where the first variable begins in each rectangle
     * @param to where it ends; the second goes from 0 to 1
     * @param tolerance how far the bound may lie above the value, as a share of it
     * @param most after how many places to give up, with the bound reached by then
     */
    public static WorstPlace of(Objective objective, double[] from, double[] to, double tolerance, int most) {
        Search search = new Search(objective, tolerance);
        for (int part = 0; part < from.length; part++) {
            search.look(part, (from[part] + to[part]) / 2, 0.5, (to[part] - from[part]) / 2, 0.5);
        }
        return search.run(most);
    }

    /**
     * Whether the function is somewhere greater than a limit, which is told as soon as a value or all bounds tell; null if the
     * limit lies between the highest value and its bound when the search ends.
     */
    public static @Nullable Boolean exceeds(
            Objective objective, double[] from, double[] to, double limit, double tolerance, int most) {
        Search search = new Search(objective, tolerance);
        search.limit = limit;
        for (int part = 0; part < from.length && !search.surpassed(); part++) {
            search.look(part, (from[part] + to[part]) / 2, 0.5, (to[part] - from[part]) / 2, 0.5);
        }
        WorstPlace found = search.run(most);
        if (search.surpassed()) {
            return true;
        }
        return found.bound() <= limit ? false : null;
    }

    private static final class Search {

        /** A value above a limit by no more than this share may be so by rounding. */
        private static final double ROUNDING = 1e-9;

        private final Objective objective;
        private final double tolerance;
        private final PriorityQueue<Rectangle> open = new PriorityQueue<>(
                Comparator.comparingDouble(Rectangle::bound).reversed().thenComparingInt(Rectangle::part));
        private WorstPlace best = new WorstPlace(0, 0, 0, 0, 0, 0);
        /** What the highest value is held against; infinite if it is to be found itself. */
        private double limit = Double.POSITIVE_INFINITY;

        private double closed;
        private int evaluations;

        private Search(Objective objective, double tolerance) {
            this.objective = objective;
            this.tolerance = tolerance;
        }

        private WorstPlace run(int most) {
            Rectangle highest = open.poll();
            while (highest != null && highest.bound() > enough() && evaluations < most && !surpassed()) {
                double halfX = highest.halfX() / 2;
                double halfY = highest.halfY() / 2;
                for (int quarter = 0; quarter < 4; quarter++) {
                    double x = highest.x() + (quarter % 2 == 0 ? -halfX : halfX);
                    double y = highest.y() + (quarter < 2 ? -halfY : halfY);
                    look(highest.part(), x, y, halfX, halfY);
                }
                highest = open.poll();
            }
            double left = highest == null ? 0 : highest.bound();
            double bound = Math.max(Math.max(best.value(), closed), left);
            return new WorstPlace(best.part(), best.x(), best.y(), best.value(), bound, evaluations);
        }

        private void look(int part, double x, double y, double halfX, double halfY) {
            double value = objective.value(part, x, y);
            evaluations++;
            if (value > best.value()) {
                best = new WorstPlace(part, x, y, value, 0, 0);
            }
            double bound = objective.bound(part, x, y, halfX, halfY, value);
            if (bound > enough()) {
                open.add(new Rectangle(part, x, y, halfX, halfY, bound));
            } else {
                closed = Math.max(closed, bound);
            }
        }

        private double enough() {
            double near = best.value() * (1 + tolerance);
            return limit < Double.POSITIVE_INFINITY ? Math.max(near, limit) : near;
        }

        private boolean surpassed() {
            return best.value() > limit * (1 + ROUNDING);
        }
    }
}
