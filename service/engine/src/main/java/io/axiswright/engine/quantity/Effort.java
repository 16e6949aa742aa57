package io.axiswright.engine.quantity;

/** What is stated as a force (linear axes) or a torque (rotary axes); the unit decides which. */
public sealed interface Effort extends Quantity permits Force, Torque {}
