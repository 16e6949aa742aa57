/** Clients that a generator makes of the released API document do real work with the running service. */
@org.jspecify.annotations.NullMarked
package io.axiswright.client;
