/** Answers of pure functions, kept for as long as studies are made that ask the same again. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.memory;
