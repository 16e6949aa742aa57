/** The records of the engine and of the app as JSON: what a document may hold, reading it strictly, writing it. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.wire;
