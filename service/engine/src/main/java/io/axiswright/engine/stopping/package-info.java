/** How every stop zone comes to rest, what a loss of power does, and how far safeguards must be from the hazard. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.stopping;
