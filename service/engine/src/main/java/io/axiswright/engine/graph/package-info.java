/** Records that hold records and lists, taken apart and put together without code for each of their types. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.graph;
