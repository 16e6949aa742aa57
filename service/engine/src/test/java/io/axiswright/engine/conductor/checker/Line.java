package io.axiswright.engine.conductor.checker;

/**
 * What a line of a circuit may be made of.
 *
 * @param parallel conductors in parallel
 * @param size their size
 */
public record Line(int parallel, String size) {}
