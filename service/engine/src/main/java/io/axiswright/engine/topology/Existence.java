package io.axiswright.engine.topology;

/** Whether a layout exists, as far as it is known. */
enum Existence {
    /** One was found. */
    EXISTS,
    /** It is proven that there is none. */
    NONE,
    /** Neither, within the work allowed. */
    OPEN
}
