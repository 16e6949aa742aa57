package io.axiswright.engine.controlpower;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import java.util.List;

/**
 * A control supply placed on the machine.
 *
 * @param id its name in this result
 * @param item its catalogue id
 * @param place id of the network place it stands at
 * @param chains the chains it feeds
 * @param steadyCurrent output current with released brakes held, at the output voltage where it is larger
 * @param worstCurrent largest output current, brakes pulling in
 * @param availableCurrent rated output current after derating for temperature
 * @param loadShare worst current with reserve over available current; at most 1 where it suffices
 * @param inputPower active power it takes from its feed in steady operation
 * @param inputApparentPower apparent power it takes then
 * @param heat power it turns into heat then
 * @param holdUp how long its output stays up after mains is lost, in steady operation
 * @param feed what it is fed from
 */
public record PlacedControlSupply(
        String id,
        String item,
        String place,
        List<String> chains,
        Current steadyCurrent,
        Current worstCurrent,
        Current availableCurrent,
        double loadShare,
        Power inputPower,
        ApparentPower inputApparentPower,
        Power heat,
        Time holdUp,
        Feed feed) {

    /** Keeps the list from being changed. */
    public PlacedControlSupply {
        chains = List.copyOf(chains);
    }
}
