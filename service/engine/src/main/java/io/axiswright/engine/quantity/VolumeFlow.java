package io.axiswright.engine.quantity;

/**
 * A flow of a volume with time.
 *
 * @param cubicMetresPerSecond the value in m³/s; finite
 */
public record VolumeFlow(double cubicMetresPerSecond) implements Quantity {

    /** Refuses a value that is not finite. */
    public VolumeFlow {
        Quantity.requireFinite(cubicMetresPerSecond);
    }

    @Override
    public double si() {
        return cubicMetresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLUME_FLOW;
    }
}
