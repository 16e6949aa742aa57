/** Short-circuit currents at every point of the AC distribution, and what devices, conductors and loads make of them. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.fault;
