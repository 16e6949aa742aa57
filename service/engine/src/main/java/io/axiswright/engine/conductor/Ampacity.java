package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.Sourced;
import org.jspecify.annotations.Nullable;

/**
 * An ampacity and how it was corrected.
 *
 * @param base value of the table
 * @param ambient factor for the ambient temperature
 * @param together factor for circuits together
 * @param neutral factor for a neutral loaded by harmonics; null where there is none
 * @param parallel conductors in parallel
 */
record Ampacity(
        Sourced<Current> base,
        Sourced<Ratio> ambient,
        Sourced<Ratio> together,
        @Nullable Sourced<Ratio> neutral,
        int parallel) {

    Current corrected() {
        return new Current(base.value().si()
                * ambient.value().si()
                * together.value().si()
                * (neutral == null ? 1 : neutral.value().si())
                * parallel);
    }
}
