/** Energy the axes return: the voltage of every DC bus over time, the braking units that hold it, and how fast zones stop. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.braking;
