package io.axiswright.engine.comparison;

import java.util.List;

/**
 * Why a consequence came, as far as the trials tell.
 *
 * @param parts what single changes do to it
 * @param alone whether one of them brings it alone
 * @param joint which bring it together, where none does alone
 */
record Explanation(List<Part> parts, boolean alone, Joint joint) {}
