package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import org.jspecify.annotations.Nullable;

/**
 * The input of a drive unit with an uncontrolled rectifier before the capacitors of its DC bus. Chokes, those bought for it
 * included, are told by their reactance at mains frequency as a share of rated voltage over rated input current (of line-to-line
 * voltage over √3 times the current for three phases).
 *
 * @param lineChoke reactance in each line (in the line of one phase); none if absent
 * @param linkChoke reactance between rectifier and capacitors; none if absent
 */
public record RectifierInput(
        @Bounds(min = 0, max = 0.5) @Nullable Double lineChoke,
        @Bounds(min = 0, max = 0.5) @Nullable Double linkChoke) {

    /** The share in the lines. */
    public double line() {
        return lineChoke == null ? 0 : lineChoke;
    }

    /** The share in the link. */
    public double link() {
        return linkChoke == null ? 0 : linkChoke;
    }
}
