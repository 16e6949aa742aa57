package io.axiswright.app.project;

/**
 * How often a machine has an item.
 *
 * @param item catalogue id of the item
 * @param count how often
 */
record ItemCount(String item, int count) {}
