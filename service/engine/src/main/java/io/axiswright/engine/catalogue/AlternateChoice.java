package io.axiswright.engine.catalogue;

/** Which of several admissible items is taken. */
public enum AlternateChoice {
    /** The first of the list. */
    FIRST,
    /** The cheapest by the price of one unit; one on request after all that have a price; then by id, numbers in it by value. */
    CHEAPEST
}
