package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;

/**
 * Constant acceleration for half the time, constant deceleration for the other half.
 */
@JsonTypeName("TRIANGULAR")
public record Triangular() implements MotionLaw {}
