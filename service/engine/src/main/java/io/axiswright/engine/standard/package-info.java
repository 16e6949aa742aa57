/** The codes' tables as data with their sources, and their look-ups, which never interpolate: the next worse row counts. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.standard;
