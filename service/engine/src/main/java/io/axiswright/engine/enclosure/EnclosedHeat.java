package io.axiswright.engine.enclosure;

import io.axiswright.engine.design.Enclosure;
import java.util.List;

/**
 * An enclosure with what gives off heat in it.
 *
 * @param pointer JSON Pointer to the enclosure in the caller's request
 * @param enclosure the enclosure
 * @param sources what gives off heat in it
 * @param unknown what gives off heat in it nobody knows how much
 */
public record EnclosedHeat(String pointer, Enclosure enclosure, List<HeatSource> sources, List<String> unknown) {}
