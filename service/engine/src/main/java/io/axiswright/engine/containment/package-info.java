/** Cables in their routes: fill of conduit and trunking, bends, glands. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.containment;
