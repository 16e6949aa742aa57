package io.axiswright.engine.topology;

import io.axiswright.engine.design.SecondMeasure;
import java.util.List;

/**
 * What less of a second measure costs: layouts of which none has both less cost and no more of the measure, or the other way round,
 * than another. Found by limiting the measure below that of the layout before and looking for the cheapest layout again. There
 * are at most 16 such searches, and the exact ones among them together may do the work of one for the layout.
 *
 * @param measure what is traded against cost
 * @param points from the cheapest layout to that with least of the measure. Where the layout of the answer is not proven cheapest, a
 *     point may cost less; the answer is then no point
 * @param end what is known of layouts with less of the measure than the last point
 */
public record TradeOff(SecondMeasure measure, List<TradeOffPoint> points, TradeOffEnd end) {

    /** Keeps the list from being changed. */
    public TradeOff {
        points = List.copyOf(points);
    }
}
