package io.axiswright.app.project;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.finding.InvalidDesign;

/** What a revision asks of the engine: one run of all disciplines. */
public interface RevisionStudy {

    /**
     * The outcome of a design under a code basis with a catalogue; the same for the same input.
     *
     * @throws InvalidDesign if the design has no meaning
     */
    StudyOutcome study(CodeBasis codeBasis, Catalogue catalogue, Design design);
}
