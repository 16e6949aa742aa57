package io.axiswright.engine.design;

/** What a layout may be judged by beside its cost; less is better. */
public enum SecondMeasure {
    /** How many gateways there are. */
    GATEWAYS,
    /** Length of the longest spur cable, those of axes to come among them. */
    LONGEST_SPUR
}
