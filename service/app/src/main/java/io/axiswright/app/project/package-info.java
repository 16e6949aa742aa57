/** Projects and their immutable, numbered revisions. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.project;
