/** The stateless endpoints: a design comes in, the system or the part asked for goes out, nothing is kept. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.sizing;
