package io.axiswright.engine.supply;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;

/**
 * A transformer that would feed loads whose voltage the mains do not have.
 *
 * @param feed phases of its secondary
 * @param secondary its secondary voltage
 * @param power its least rating, without reserve for inrush
 * @param secondaryCurrent current of its loads
 * @param primaryCurrent current it draws from the mains, losses left out
 * @param loads ids of the loads it would feed
 */
public record TransformerNeed(
        Feed feed,
        Voltage secondary,
        ApparentPower power,
        Current secondaryCurrent,
        Current primaryCurrent,
        List<String> loads) {}
