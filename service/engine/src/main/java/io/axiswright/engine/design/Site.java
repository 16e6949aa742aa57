package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Temperature;

/**
 * Where the machine stands.
 *
 * @param ambient highest air temperature at the motors, −40 … 70 °C
 * @param enclosureAmbient highest air temperature inside the enclosures
 * @param altitude height above sea level
 */
public record Site(
        @Bounds(min = 233.15, max = 343.15) Temperature ambient,
        @Bounds(min = 233.15, max = 343.15) Temperature enclosureAmbient,
        @Bounds(min = -500, max = 5000) Length altitude) {}
