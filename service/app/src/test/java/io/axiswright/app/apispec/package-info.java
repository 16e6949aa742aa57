/** The document as released and its examples: kept true by sending the examples to the running service. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.apispec;
