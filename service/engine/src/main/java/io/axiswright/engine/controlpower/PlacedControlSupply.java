package io.axiswright.engine.controlpower;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A control supply placed on the machine.
 *
 * @param id its name in this result
 * @param item its catalogue id
 * @param count how many of them in parallel
 * @param spare how many of them may fail with everything still fed
 * @param place id of the network place it stands at
 * @param chains the chains it feeds
 * @param steadyCurrent output current with released brakes held, at the output voltage where it is larger
 * @param worstCurrent largest output current, brakes pulling in
 * @param availableCurrent rated output current of those that have not failed, after derating for temperature and
 *     altitude
 * @param loadShare worst current with reserve over available current; at most 1 where it suffices
 * @param inputPower active power they take together from their feed in steady operation
 * @param inputApparentPower apparent power they take together then
 * @param inputInrush peak of the input current when they are switched on together; absent if not known
 * @param heat power they turn into heat then
 * @param holdUp how long the output stays up by itself after mains is lost, in steady operation
 * @param buffer what feeds on after that; absent if nothing has to, or no buffer of the catalogue lasts long enough
 * @param feed what it is fed from
 */
public record PlacedControlSupply(
        String id,
        String item,
        @Bounds(min = 1, max = 16) int count,
        @Bounds(min = 0, max = 15) int spare,
        String place,
        List<String> chains,
        Current steadyCurrent,
        Current worstCurrent,
        Current availableCurrent,
        double loadShare,
        Power inputPower,
        ApparentPower inputApparentPower,
        @Nullable Current inputInrush,
        Power heat,
        Time holdUp,
        @Nullable ChosenBuffer buffer,
        Feed feed) {

    /** Keeps the list from being changed. */
    public PlacedControlSupply {
        chains = List.copyOf(chains);
    }
}
