/** Harmonic currents of the rectifiers of the machine, and the distortion they make at the point of common coupling. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.harmonic;
