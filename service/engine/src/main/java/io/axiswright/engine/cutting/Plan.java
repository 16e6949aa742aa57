package io.axiswright.engine.cutting;

import java.util.List;

/**
 * How pieces are cut.
 *
 * @param patterns for each stock length how many pieces of each kind are cut from it; together at least those wanted
 * @param bound proven: no fewer stock lengths will do
 */
record Plan(List<List<Integer>> patterns, int bound) {}
