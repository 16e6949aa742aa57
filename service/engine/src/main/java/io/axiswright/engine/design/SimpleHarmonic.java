package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;

/** s = (1 − cos(pi·u))/2: cosine acceleration, with a jump at both ends. */
@JsonTypeName("SIMPLE_HARMONIC")
public record SimpleHarmonic() implements MotionLaw {}
