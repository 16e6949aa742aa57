/** Pointers of findings and faults, held against the requests they are about. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.sizing;
