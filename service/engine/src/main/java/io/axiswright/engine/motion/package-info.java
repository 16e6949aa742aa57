/** The segments of a cycle as exact courses of speed, and what in them says too much, too little or the impossible. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.motion;
