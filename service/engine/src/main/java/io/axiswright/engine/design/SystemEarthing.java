package io.axiswright.engine.design;

/** How a supply and the frames of what it feeds are earthed (IEC 60364-1 312.2). */
public enum SystemEarthing {
    /** A point of the source is earthed, frames are joined to it by a conductor. */
    TN,
    /** A point of the source is earthed, frames have an earth electrode of their own. */
    TT,
    /** The source is not earthed, or through a high impedance; frames are. */
    IT
}
