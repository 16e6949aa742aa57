package io.axiswright.engine.condition;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * All of several conditions hold.
 *
 * @param conditions the conditions
 */
@JsonTypeName("ALL")
public record AllOf(@Count(min = 1, max = 32) List<Condition> conditions) implements Condition {

    /** Keeps the conditions from being changed. */
    public AllOf {
        conditions = List.copyOf(conditions);
    }
}
