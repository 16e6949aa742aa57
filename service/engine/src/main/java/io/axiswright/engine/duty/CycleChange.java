package io.axiswright.engine.duty;

import io.axiswright.engine.design.Segment;
import io.axiswright.engine.motion.Motion;
import io.axiswright.engine.quantity.Payload;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * A cycle run otherwise than stated.
 *
 * @param motions how each segment moves
 * @param payloads what each carries, kg or kg·m²
 */
record CycleChange(Function<Segment, Motion> motions, ToDoubleFunction<Segment> payloads) {

    /** As stated. */
    static final CycleChange NONE = new CycleChange(Motion::of, CycleChange::stated);

    /** Every motion taking so many times as long. */
    static CycleChange slower(double factor) {
        return new CycleChange(segment -> Motion.of(segment).slower(factor), CycleChange::stated);
    }

    /** The payload a segment states; 0 if none. */
    static double stated(Segment segment) {
        Payload payload = segment.payload();
        return payload == null ? 0 : payload.si();
    }
}
