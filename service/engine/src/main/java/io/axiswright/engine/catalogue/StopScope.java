package io.axiswright.engine.catalogue;

/** What a gateway's stop input acts on. */
public enum StopScope {
    /** It has no stop input. */
    NONE,
    /** All axes on the gateway stop together. */
    GATEWAY,
    /** All axes on the whole trunk stop together. */
    TRUNK
}
