package io.axiswright.engine.catalogue;

/** How binding a need is. */
public enum NeedKind {
    /** Always bought. */
    REQUIRED,
    /** Bought where its condition holds. */
    CONDITIONAL,
    /** Offered, not bought unless asked for. */
    OPTIONAL,
    /** Needed, but the customer brings it. */
    CUSTOMER_SUPPLIED,
    /** Comes along without charge. */
    NO_CHARGE
}
