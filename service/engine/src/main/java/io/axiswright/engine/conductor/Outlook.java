package io.axiswright.engine.conductor;

/** What can be said of a circuit before any size is tried: how sizes are judged, or that the tables do not reach it. */
sealed interface Outlook permits Judge, Gap {}
