package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;

/**
 * s = 10u³ − 15u⁴ + 6u⁵.
 */
@JsonTypeName("POLYNOMIAL_345")
public record Polynomial345() implements MotionLaw {}
