package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;

/** Some single beams across the direction of approach that see whole bodies. */
@JsonTypeName("BEAM_GRID")
public record BeamGrid() implements Detection {}
