package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.DeviceRatings;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The protective device of a circuit.
 *
 * @param rating its rated current
 * @param source where a chosen rating comes from; absent for one given
 * @param least the least its load asks for
 * @param most the most its load allows; absent where the conductor alone limits it
 */
record Device(
        Current rating,
        @Nullable Source source,
        Current least,
        @Nullable Current most) {

    /** The given device, or the standard rating next above {@code wanted}; nothing above the largest one. */
    static Optional<Device> of(
            Circuit circuit, CodeBasis basis, Current least, Current wanted, @Nullable Current most) {
        Current given = circuit.deviceRating();
        if (given != null) {
            return Optional.of(new Device(given, null, least, most));
        }
        Optional<Sourced<Current>> chosen = DeviceRatings.nextUp(basis, circuit.device(), wanted);
        return chosen.map(rating -> new Device(rating.value(), rating.source(), least, most));
    }

    boolean tooSmall() {
        return !Limits.within(least.si(), rating.si());
    }

    boolean tooLarge() {
        return most != null && !Limits.within(rating.si(), most.si());
    }

    boolean chosen() {
        return source != null;
    }
}
