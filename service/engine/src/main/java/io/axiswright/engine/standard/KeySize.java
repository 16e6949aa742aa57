package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Length;

/**
 * A parallel key and its keyways.
 *
 * @param width width of the key
 * @param height height of the key
 * @param shaftDepth depth of the keyway in the shaft
 * @param hubDepth depth of the keyway in the hub
 * @param source where the sizes come from
 */
public record KeySize(Length width, Length height, Length shaftDepth, Length hubDepth, Source source) {

    /** Standard and table. */
    public String clause() {
        return source.clause();
    }
}
