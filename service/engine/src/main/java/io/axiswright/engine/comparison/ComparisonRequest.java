package io.axiswright.engine.comparison;

import io.axiswright.engine.study.StudyRequest;
import java.util.List;

/**
 * What is to be compared.
 *
 * @param before the first study
 * @param after the second study
 * @param budget most studies to spend on finding causes; two are needed per input change, and a sixth is kept for
 *     trials of several changes at once
 */
public record ComparisonRequest(StudyRequest before, StudyRequest after, int budget) {

    /** The same with the parts of the first design under the ids they have in the second. */
    ComparisonRequest renamed(List<Rename> renames) {
        var first = new StudyRequest(
                before.codeBasis(),
                before.catalogue(),
                Renames.applied(renames, before.design()),
                before.catalogueSource(),
                before.timeCourses());
        return new ComparisonRequest(first, after, budget);
    }
}
