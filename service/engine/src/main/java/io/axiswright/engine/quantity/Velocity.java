package io.axiswright.engine.quantity;

/** What is stated as a linear or an angular speed; the unit decides which. */
public sealed interface Velocity extends Quantity permits Speed, AngularSpeed {}
