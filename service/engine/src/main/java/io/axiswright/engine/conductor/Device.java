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
 * @param range what its load lets it be
 */
record Device(Current rating, @Nullable Source source, DeviceRange range) {

    /** The given device, or the standard rating next above what is wanted; nothing above the largest one. */
    static Optional<Device> of(Circuit circuit, CodeBasis basis, DeviceRange range) {
        Current given = circuit.deviceRating();
        if (given != null) {
            return Optional.of(new Device(given, null, range));
        }
        Optional<Sourced<Current>> chosen = DeviceRatings.nextUp(basis, circuit.device(), range.wanted());
        return chosen.map(rating -> new Device(rating.value(), rating.source(), range));
    }

    boolean tooSmall() {
        return !Limits.within(range.least().si(), rating.si());
    }

    boolean tooLarge() {
        Current most = range.most();
        return most != null && !Limits.within(rating.si(), most.si());
    }

    boolean chosen() {
        return source != null;
    }
}
