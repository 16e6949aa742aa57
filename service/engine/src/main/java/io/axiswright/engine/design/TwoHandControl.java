package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;

/**
 * A control that needs both hands.
 *
 * @param shrouded whether shrouds keep hands from reaching in while its buttons are pressed
 */
@JsonTypeName("TWO_HAND_CONTROL")
public record TwoHandControl(boolean shrouded) implements Detection {}
