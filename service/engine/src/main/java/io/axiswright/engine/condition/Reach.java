package io.axiswright.engine.condition;

/** What an attribute is an attribute of. */
public enum Reach {
    /** The whole machine. */
    MACHINE,
    /** One axis. */
    AXIS,
    /** One branch circuit. */
    CIRCUIT;

    /** Whether what is known of one such thing includes an attribute of that reach: what holds for the machine holds for all on it. */
    public boolean knows(Reach attribute) {
        return attribute == MACHINE || attribute == this;
    }
}
