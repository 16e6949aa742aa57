package io.axiswright.engine.supply;

import io.axiswright.engine.design.Installation;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Where a feeder lies.
 *
 * @param transformer the transformer whose secondary it brings to a panel; absent for that of the mains
 * @param pointer JSON Pointer, in the request, to what a finding about it follows from
 * @param length its length
 * @param deviceLimit highest rating of its device beside what the code's rule for feeders sets, in A
 */
record FeederPlace(@Nullable String transformer, String pointer, Length length, double deviceLimit) {

    /** From the supply terminals to the mains panel. */
    static FeederPlace ofMains(Installation installation) {
        return new FeederPlace(null, Feeder.POINTER, installation.feederLength(), Double.POSITIVE_INFINITY);
    }

    /** From the secondary terminals of a transformer to the panel beside it. */
    static FeederPlace behind(String transformer, String pointer, double deviceLimit) {
        return new FeederPlace(transformer, pointer, new Length(0), deviceLimit);
    }

    /** What it is called. */
    String id() {
        return transformer == null ? Feeder.ID : Feeder.behind(transformer);
    }

    /** The same as the subject of a sentence. */
    String subject() {
        return transformer == null ? "the feeder" : "the feeder behind transformer " + transformer;
    }

    /** The id of a circuit behind it, counted from 1. */
    String circuit(int number) {
        return (transformer == null ? "C" : transformer + "/C") + number;
    }
}
