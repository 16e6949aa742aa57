package io.axiswright.engine.condition;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * None of several conditions holds.
 *
 * @param conditions the conditions
 */
@JsonTypeName("NONE")
public record NoneOf(@Count(min = 1, max = 32) List<Condition> conditions) implements Condition {

    /** Keeps the conditions from being changed. */
    public NoneOf {
        conditions = List.copyOf(conditions);
    }
}
