package io.axiswright.engine.condition;

import io.axiswright.engine.quantity.Quantity;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * What is known of a machine, or of one axis or circuit of it. What is not known is not among them.
 *
 * @param quantities its numbers
 * @param words what is named
 * @param flags what is so
 */
public record Facts(
        Map<QuantityAttribute, Quantity> quantities, Map<WordAttribute, String> words, Set<FlagAttribute> flags) {

    /** Nothing is known. */
    public static final Facts NONE = new Facts(Map.of(), Map.of(), Set.of());

    /** Keeps what is known from being changed. */
    public Facts {
        quantities = Map.copyOf(quantities);
        words = Map.copyOf(words);
        flags = Set.copyOf(flags);
    }

    /** These and those; of an attribute in both, what the others say. */
    public Facts and(Facts others) {
        Map<QuantityAttribute, Quantity> allQuantities = new HashMap<>(quantities);
        allQuantities.putAll(others.quantities);
        Map<WordAttribute, String> allWords = new HashMap<>(words);
        allWords.putAll(others.words);
        Set<FlagAttribute> allFlags = new HashSet<>(flags);
        allFlags.addAll(others.flags);
        return new Facts(allQuantities, allWords, allFlags);
    }
}
