/** How a drive unit is held and joined to the machine: what its shaft fastening carries, and whether its feet fit. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.mounting;
