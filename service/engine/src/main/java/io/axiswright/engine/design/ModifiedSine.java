package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;

/** Sine acceleration, faster over the first and the last eighth of the time than between. */
@JsonTypeName("MODIFIED_SINE")
public record ModifiedSine() implements MotionLaw {}
