package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;

/** Constant accelerations joined by quarter sine waves of an eighth of the time each. */
@JsonTypeName("MODIFIED_TRAPEZOID")
public record ModifiedTrapezoid() implements MotionLaw {}
