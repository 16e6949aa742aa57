/** Cutting pieces from equal stock lengths with the least waste, and the proof of how few would do (one-dimensional cutting stock). */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.cutting;
