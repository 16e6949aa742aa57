/** Stored catalogues and their immutable versions. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.catalogues;
