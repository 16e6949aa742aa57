package io.axiswright.engine.design;

/** Lines of a bill that are sold alike. */
public enum LineClass {
    /** What is required, the conditional lines that hold among it. */
    REQUIRED,
    /** What may be bought beside it. */
    OPTIONAL,
    /** Spare parts. */
    SPARE
}
