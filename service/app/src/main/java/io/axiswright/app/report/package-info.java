/** Results as documents that other programs take: tables and trade documents. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.report;
