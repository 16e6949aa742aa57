package io.axiswright.engine.design;

/** Stop categories of IEC 60204-1:2016 9.2.2. */
public enum StopCategory {
    /** Power removed at once; uncontrolled stop. */
    CATEGORY_0,
    /** Controlled stop, then power removed. */
    CATEGORY_1,
    /** Controlled stop, power kept. */
    CATEGORY_2
}
