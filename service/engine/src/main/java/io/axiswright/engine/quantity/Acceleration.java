package io.axiswright.engine.quantity;

/** What is stated as a linear or an angular acceleration; the unit decides which. */
public sealed interface Acceleration extends Quantity permits LinearAcceleration, AngularAcceleration {}
