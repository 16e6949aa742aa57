package io.axiswright.engine.conductor;

import java.util.Locale;

/** The limits a conductor is held against. */
public enum Limit {
    /** Smallest size the machine code permits, or the smallest its tables know. */
    CODE_MINIMUM,
    /** Temperature rating of the terminals. */
    TERMINATION,
    /** Ampacity after ambient and grouping. */
    AMPACITY,
    /** Highest device, or continuous load, on small conductors (NFPA 70 240.4(D)). */
    SMALL_CONDUCTOR,
    /** Conductor and protective device fit each other. */
    DEVICE_COORDINATION,
    /** Voltage drop. */
    VOLTAGE_DROP,
    /** Heating by a fault until the device clears it. */
    FAULT_WITHSTAND,
    /** Thinnest conductor that the terminals hold. */
    TERMINAL_RANGE;

    /** The limit in words. */
    String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether a larger conductor for this limit counts as enlarged beyond what its current needs (NFPA 70 250.122(B)). */
    boolean beyondAmpacity() {
        return this == VOLTAGE_DROP || this == FAULT_WITHSTAND || this == TERMINAL_RANGE;
    }
}
