package io.axiswright.engine.catalogue;

import io.axiswright.engine.condition.Condition;
import io.axiswright.engine.condition.Facts;
import org.jspecify.annotations.Nullable;

/**
 * One of the items that serve.
 *
 * @param item id of the item
 * @param when where it is admissible; everywhere if absent
 */
public record Alternate(String item, @Nullable Condition when) {

    /** Whether it may be taken by whom these facts are known of. */
    public boolean admissible(Facts facts) {
        return when == null || when.holds(facts);
    }
}
