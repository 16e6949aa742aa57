package io.axiswright.engine.quantity;

/** What is stated as a linear or an angular jerk; the unit decides which. */
public sealed interface Jerk extends Quantity permits LinearJerk, AngularJerk {}
