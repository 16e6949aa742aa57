/** What the machine takes from the mains in a year, what becomes of it, what it costs, and what thicker cables would save. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.energy;
