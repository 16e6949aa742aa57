package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.Sourced;

/**
 * An ampacity and how it was corrected.
 *
 * @param base value of the table
 * @param ambient factor for the ambient temperature
 * @param together factor for circuits together
 */
record Ampacity(Sourced<Current> base, Sourced<Ratio> ambient, Sourced<Ratio> together) {

    Current corrected() {
        return new Current(
                base.value().si() * ambient.value().si() * together.value().si());
    }
}
