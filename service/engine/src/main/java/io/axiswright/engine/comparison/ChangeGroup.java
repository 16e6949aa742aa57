package io.axiswright.engine.comparison;

import java.util.List;

/**
 * The same change made at many places: one currency for another, one value of the design for another under one name, or whatever
 * happened to what bears one name in the rows of the catalogue. It was tried as one, and is named as one cause where no single one of its
 * changes is known to be.
 *
 * @param id "group-1", "group-2" … in the order of the document
 * @param changes ids of its changes; at least ten
 * @param eachExamined whether each of its changes was tried by itself too; if not, those were of which it was known, or could be
 *     afforded to find out, that they matter
 * @param text the same in words
 */
public record ChangeGroup(String id, List<String> changes, boolean eachExamined, String text) {}
