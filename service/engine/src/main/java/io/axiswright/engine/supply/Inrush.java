package io.axiswright.engine.supply;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a protective device meets when everything behind it is switched on at one moment, as after a loss of mains.
 *
 * @param peak sum of the peaks its loads state; a transformer counts with √2 times its r.m.s. inrush. The impedance of the
 *     network, which lessens it, is left out; so are loads that state none
 * @param tolerated highest peak at which the device surely does not trip without delay; absent if not known
 */
public record Inrush(Current peak, @Nullable Current tolerated) {

    /** How the tolerated peak came about, if it is known. */
    Optional<Derivation> derivation(String subject, @Nullable Current rating) {
        if (tolerated == null || rating == null) {
            return Optional.empty();
        }
        var multiple = new Ratio(tolerated.si() / rating.si() / Math.sqrt(2));
        return Optional.of(new Derivation(
                subject,
                "i_tolerated",
                "sqrt(2) m I_n",
                Derivation.inputs("m", multiple, "I_n", rating, "i_inrush", peak),
                DeviceChoice.INRUSH,
                tolerated));
    }
}
