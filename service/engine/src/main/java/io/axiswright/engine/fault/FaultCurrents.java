package io.axiswright.engine.fault;

import io.axiswright.engine.quantity.Current;
import java.util.Comparator;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Initial symmetrical short-circuit currents, rms, of every kind of fault there can be at a place.
 *
 * @param threePhase fault of all three lines; absent where there are fewer
 * @param lineToLine fault between two lines; absent where there is one
 * @param lineToNeutral fault between a line and neutral; absent where there is no neutral
 * @param lineToEarth fault between a line and the protective conductor; absent where it is not known: in IT, in TT without
 *     a stated loop impedance, and where no protective conductor was found
 */
public record FaultCurrents(
        @Nullable Current threePhase,
        @Nullable Current lineToLine,
        @Nullable Current lineToNeutral,
        @Nullable Current lineToEarth) {

    /** The largest of them. */
    Current largest() {
        return all().max(Comparator.comparingDouble(Current::si)).orElseThrow();
    }

    /** The smallest of them. */
    Current smallest() {
        return all().min(Comparator.comparingDouble(Current::si)).orElseThrow();
    }

    private Stream<Current> all() {
        return Stream.of(threePhase, lineToLine, lineToNeutral, lineToEarth).filter(Objects::nonNull);
    }
}
