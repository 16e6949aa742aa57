/** Which axis hangs on which gateway and host port, in which order, over which cables, at least cost. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.topology;
