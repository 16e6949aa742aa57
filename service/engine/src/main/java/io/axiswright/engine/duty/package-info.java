/** What each axis asks of its drive unit over its cycle, and which drive unit holds it. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.duty;
