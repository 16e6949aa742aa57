package io.axiswright.engine.fault;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Voltage;

/**
 * A transformer at the mains panel, its primary between the lines of the mains.
 *
 * @param id what it is called
 * @param feed phases of its secondary
 * @param secondary its secondary voltage
 * @param power its rating
 * @param impedance its impedance (short-circuit voltage) as a fraction of its rated voltage
 */
public record FaultTransformer(String id, Feed feed, Voltage secondary, ApparentPower power, double impedance) {}
