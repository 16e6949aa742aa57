package io.axiswright.engine.quantity;

/** What is stated as a length (linear axes) or an angle (rotary axes); the unit decides which. */
public sealed interface Displacement extends Quantity permits Length, Angle {}
