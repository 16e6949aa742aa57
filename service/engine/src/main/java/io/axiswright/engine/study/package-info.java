/** Runs the disciplines in order over one design and hands each what it needs of those before it. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.study;
