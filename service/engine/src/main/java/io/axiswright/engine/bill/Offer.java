package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Item;

/**
 * An item at its place in the catalogue.
 *
 * @param item the item
 * @param kindOrder place of its kind among the catalogue's lists
 * @param rank place in an order in which every item stands before what it needs
 * @param pointer JSON Pointer to it in the request
 */
record Offer(Item item, int kindOrder, int rank, String pointer) {}
