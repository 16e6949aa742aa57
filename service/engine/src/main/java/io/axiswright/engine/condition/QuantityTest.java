package io.axiswright.engine.condition;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Quantity;

/**
 * A number compared with another.
 *
 * @param attribute the number
 * @param comparison how it must stand to the value
 * @param value the value, in a unit of the attribute's kind; of counts in the unit 1
 */
@JsonTypeName("QUANTITY")
public record QuantityTest(QuantityAttribute attribute, Relation comparison, Quantity value) implements Condition {}
