/** Works out a complete multi-axis servo system from a design, a catalogue and a code basis. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine;
