package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import java.util.stream.DoubleStream;

/** Whether a control supply can be fed from the mains at hand. */
final class MainsMatch {

    private MainsMatch() {}

    /** Whether the mains has the phases it needs; a DC bus is none, as it is down when the machine is stopped. */
    static boolean hasPhases(Mains mains, ControlSupply supply) {
        return switch (supply.feed()) {
            case ONE_PHASE -> true;
            case THREE_PHASE ->
                mains.system() == SupplySystem.THREE_PHASE_THREE_WIRE
                        || mains.system() == SupplySystem.THREE_PHASE_FOUR_WIRE;
            case DC_BUS -> false;
        };
    }

    /** Whether one of the voltages the mains offers lies within the input range about its rated voltage. */
    static boolean hasVoltage(Mains mains, ControlSupply supply) {
        double rated = supply.ratedVoltage().si();
        return offered(mains, supply.feed())
                .anyMatch(voltage -> Math.abs(voltage - rated) <= ControlConstants.MAINS_MATCH * rated);
    }

    private static DoubleStream offered(Mains mains, Feed feed) {
        double voltage = mains.voltage().si();
        if (feed == Feed.THREE_PHASE) {
            return DoubleStream.of(voltage);
        }
        return switch (mains.system()) {
            case ONE_PHASE_TWO_WIRE, THREE_PHASE_THREE_WIRE -> DoubleStream.of(voltage);
            case ONE_PHASE_THREE_WIRE -> DoubleStream.of(voltage, voltage / 2);
            case THREE_PHASE_FOUR_WIRE -> DoubleStream.of(voltage, voltage / Math.sqrt(3));
        };
    }
}
