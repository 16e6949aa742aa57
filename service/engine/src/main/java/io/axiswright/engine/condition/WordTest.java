package io.axiswright.engine.condition;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * Something is named by one of several words.
 *
 * @param attribute what is named
 * @param oneOf the words, or ids of items
 */
@JsonTypeName("WORD")
public record WordTest(
        WordAttribute attribute, @Count(min = 1, max = 256) List<String> oneOf) implements Condition {

    /** Keeps the words from being changed. */
    public WordTest {
        oneOf = List.copyOf(oneOf);
    }
}
