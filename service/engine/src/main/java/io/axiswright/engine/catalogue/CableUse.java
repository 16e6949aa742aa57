package io.axiswright.engine.catalogue;

/** What a cable assembly joins. */
public enum CableUse {
    /** Host port to the first gateway of a trunk. */
    HOST,
    /** Gateway to gateway. */
    TRUNK,
    /** Gateway to drive unit, link and 24 V together. */
    SPUR,
    /** Control supply to the first gateway of a chain, or gateway to gateway. */
    CONTROL_SUPPLY,
    /** DC bus of one unit to that of the next. */
    BUS_LINK,
    /** Braking unit to its resistor. */
    BRAKING_RESISTOR,
    /** Where stop demands come from to a stop input. */
    STOP_SIGNAL;

    /** Whether its cables are links of the network, which carry only so far. */
    boolean isNetworkLink() {
        return switch (this) {
            case HOST, TRUNK, SPUR -> true;
            case CONTROL_SUPPLY, BUS_LINK, BRAKING_RESISTOR, STOP_SIGNAL -> false;
        };
    }
}
