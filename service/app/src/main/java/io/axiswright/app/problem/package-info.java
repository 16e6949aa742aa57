/** Every failure as application/problem+json (RFC 9457), and what each kind of failure means. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.problem;
