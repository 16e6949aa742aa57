/** The OpenAPI 3.1 document: schemas from the rules by which documents are read, words from the Javadoc. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.openapi;
