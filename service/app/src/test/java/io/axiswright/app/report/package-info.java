/** Tests of the documents. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.report;
