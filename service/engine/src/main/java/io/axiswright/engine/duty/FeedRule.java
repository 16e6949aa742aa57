package io.axiswright.engine.duty;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import java.util.stream.DoubleStream;

/** Which voltage of the mains reaches a device. */
final class FeedRule {

    /** A device stands this much over its rated voltage (± 10 % about the nominal voltage, IEC 60038). */
    static final double HIGHEST = 1.1;

    private FeedRule() {}

    /**
     * The nominal voltage a device of that feed gets: of those the mains offer, the one nearest to its rated voltage that
     * it stands, or the lowest if it stands none; 0 if the mains cannot feed it. A device on a DC bus gets its rated
     * voltage, whatever feeds the bus.
     */
    static double voltage(Mains mains, Feed feed, double rated) {
        double[] offered = offered(mains, feed, rated);
        return DoubleStream.of(offered)
                .filter(v -> v <= HIGHEST * rated)
                .max()
                .orElseGet(() -> DoubleStream.of(offered).min().orElse(0));
    }

    /** The same behind a transformer: its rated voltage, if the mains have the phases it needs. */
    static double transformed(Mains mains, Feed feed, double rated) {
        return offered(mains, feed, rated).length == 0 ? 0 : rated;
    }

    private static double[] offered(Mains mains, Feed feed, double rated) {
        double line = mains.voltage().si();
        return switch (feed) {
            case DC_BUS -> new double[] {rated};
            case THREE_PHASE ->
                switch (mains.system()) {
                    case ONE_PHASE_TWO_WIRE, ONE_PHASE_THREE_WIRE -> new double[0];
                    case THREE_PHASE_THREE_WIRE, THREE_PHASE_FOUR_WIRE -> new double[] {line};
                };
            case ONE_PHASE ->
                switch (mains.system()) {
                    case ONE_PHASE_TWO_WIRE, THREE_PHASE_THREE_WIRE -> new double[] {line};
                    case ONE_PHASE_THREE_WIRE -> new double[] {line, line / 2};
                    case THREE_PHASE_FOUR_WIRE -> new double[] {line, line / Math.sqrt(3)};
                };
        };
    }
}
