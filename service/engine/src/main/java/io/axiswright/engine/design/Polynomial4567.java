package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;

/** s = 35u⁴ − 84u⁵ + 70u⁶ − 20u⁷. */
@JsonTypeName("POLYNOMIAL_4567")
public record Polynomial4567() implements MotionLaw {}
