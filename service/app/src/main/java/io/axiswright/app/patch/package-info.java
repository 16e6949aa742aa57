/** Changes to a JSON document in the two standard forms, JSON Merge Patch and JSON Patch. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.patch;
