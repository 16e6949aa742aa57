package io.axiswright.engine.quantity;

/** What is stated as a mass (linear axes) or a moment of inertia (rotary axes); the unit decides which. */
public sealed interface Payload extends Quantity permits Mass, Inertia {}
