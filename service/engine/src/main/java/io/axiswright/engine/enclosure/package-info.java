/** Heat in enclosures: what is lost in them, what their walls and coolers carry off, and the temperature that gives. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.enclosure;
