/** The smallest conductor that meets every limit of the code for a circuit, and which limit decided. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.conductor;
