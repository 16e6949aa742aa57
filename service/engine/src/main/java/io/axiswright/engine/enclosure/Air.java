package io.axiswright.engine.enclosure;

import io.axiswright.engine.design.Site;

/** What a flow of the site's air carries off. */
final class Air {

    static final String CLAUSE = "density by ISO 2533 at the altitude and temperature of the site";

    /** Specific heat of dry air, J/(kg·K). */
    private static final double SPECIFIC_HEAT = 1005;

    /** Gas constant of dry air, J/(kg·K). */
    private static final double GAS_CONSTANT = 287.05287;

    private static final double SEA_LEVEL_PRESSURE = 101_325;
    private static final double SEA_LEVEL_TEMPERATURE = 288.15;

    /** Fall of temperature with height in the standard atmosphere, K/m. */
    private static final double LAPSE = 0.0065;

    private static final double GRAVITY = 9.80665;

    private Air() {}

    /** Heat that a cubic metre of the air takes up for each kelvin, J/(m³·K). */
    static double heatCapacity(Site site) {
        double falling = 1 - LAPSE * site.altitude().si() / SEA_LEVEL_TEMPERATURE;
        double pressure = SEA_LEVEL_PRESSURE * Math.pow(falling, GRAVITY / (GAS_CONSTANT * LAPSE));
        return SPECIFIC_HEAT * pressure / (GAS_CONSTANT * site.ambient().si());
    }
}
