package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** The normalised course of a move from rest to rest (VDI 2143). */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
public sealed interface MotionLaw
        permits Trapezoidal,
                Triangular,
                SCurve,
                SimpleHarmonic,
                Cycloidal,
                Polynomial345,
                Polynomial4567,
                ModifiedTrapezoid,
                ModifiedSine {}
