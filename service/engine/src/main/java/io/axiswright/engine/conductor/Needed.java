package io.axiswright.engine.conductor;

/**
 * The thinnest line conductor that the current alone needs: what NFPA 70 250.122(B) measures an enlarged one against.
 *
 * @param parallel conductors in parallel
 * @param size number of their size
 */
record Needed(int parallel, int size) {}
