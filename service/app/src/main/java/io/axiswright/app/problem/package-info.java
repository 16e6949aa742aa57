/** Every failure as application/problem+json. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.problem;
