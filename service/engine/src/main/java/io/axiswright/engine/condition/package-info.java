/** Conditions that a catalogue states over a machine and its results, and what they are judged by. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.condition;
