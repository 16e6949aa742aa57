package io.axiswright.engine.duty;

import io.axiswright.engine.design.Segment;
import io.axiswright.engine.motion.Motion;
import io.axiswright.engine.quantity.Payload;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * A cycle run otherwise than stated.
 *
 * @param motions how each segment moves
 * @param payloads what each carries, kg or kg·m²
 * @param shafts what the mechanism's shaft does under an effort in a motion
 */
record CycleChange(
        Function<Segment, Motion> motions,
        ToDoubleFunction<Segment> payloads,
        BiFunction<LoadEffort, LoadMotion, List<ShaftPiece>> shafts) {

    /** As stated. */
    static final CycleChange NONE = new CycleChange(Motion::of, CycleChange::stated);

    CycleChange(Function<Segment, Motion> motions, ToDoubleFunction<Segment> payloads) {
        this(motions, payloads, LoadEffort::moving);
    }

    private record Driven(LoadEffort effort, LoadMotion motion) {

        private List<ShaftPiece> worked() {
            return effort.moving(motion);
        }
    }

    /** The same, for loads that differ beyond the mechanism's shaft only: what is dear to work out before it is so once. */
    CycleChange remembering() {
        Map<Driven, List<ShaftPiece>> known = new HashMap<>();
        return new CycleChange(
                motions,
                payloads,
                (effort, motion) -> effort.uneven()
                        ? known.computeIfAbsent(new Driven(effort, motion), Driven::worked)
                        : effort.moving(motion));
    }

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
