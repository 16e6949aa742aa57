package io.axiswright.engine.finding;

/** How much a finding matters. */
public enum Severity {
    /** The system as answered must not be built. */
    VIOLATION,
    /** It may be built once somebody has looked at this. */
    CAUTION,
    /** Worth knowing. */
    NOTE
}
