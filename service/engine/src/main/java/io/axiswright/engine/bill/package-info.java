/** The complete bill of materials: every line with the demands that put it there, and a check that nothing is forgotten. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.bill;
