/** A small application of the wire, problem and openapi packages alone, with controllers that exist only to test them. */
@org.jspecify.annotations.NullMarked
package io.axiswright.probe;
