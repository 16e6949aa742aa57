/** One effect and one answer for a request, however often it is sent. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.idempotency;
