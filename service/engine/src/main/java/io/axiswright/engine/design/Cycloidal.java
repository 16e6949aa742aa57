package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;

/** s = u − sin(2·pi·u)/(2·pi): sine acceleration, zero at both ends. */
@JsonTypeName("CYCLOIDAL")
public record Cycloidal() implements MotionLaw {}
