package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What happens on one DC bus over time, as points to be joined by straight lines. Both ends, the
 * reaching of the trip voltage and all highest and lowest values are among them, and every switching of the chopper unless it
 * switches more than 1000 times.
 *
 * <p>The course of a stop or of loads running down is that of a chopper that switches on at its upper and off at its lower voltage,
 * begun with the bus at switch-on. The figures of these cases are those of one that switches infinitely fast at switch-on, whose
 * bus stands nowhere lower whatever the phase of the real one's switching; so the course stays at or below the case's peak, and
 * its resistor gets a little more or less than the case says, by no more than what the bus holds between the two voltages.
 *
 * @param tolerance no straight line misses the exact course by more than this share of the range of what is drawn; larger than
 *     what was asked for where that would have taken too many points
 * @param points the points, in the order of time; two of one instant where the power jumps
 */
public record BusCourse(double tolerance, List<Point> points) {

    /**
     * One point.
     *
     * @param instant from the start of the case
     * @param voltage voltage of the bus
     * @param returnedPower power that the axes return together; negative where they take it
     * @param resistorTemperature temperature of the resistor; absent without a braking unit
     */
    public record Point(
            Time instant,
            Voltage voltage,
            Power returnedPower,
            @Nullable Temperature resistorTemperature) {}

    /** Keeps the points from being changed. */
    public BusCourse {
        points = List.copyOf(points);
    }
}
