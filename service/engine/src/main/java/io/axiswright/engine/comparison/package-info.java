/** Two studies side by side: what the caller changed, what followed from it, and which change caused which consequence. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.comparison;
