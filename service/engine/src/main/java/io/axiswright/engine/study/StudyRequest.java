package io.axiswright.engine.study;

import io.axiswright.engine.braking.TimeCourses;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import org.jspecify.annotations.Nullable;

/**
 * What a study is made from.
 *
 * @param codeBasis the electrical code to follow
 * @param catalogue what can be bought
 * @param design the machine
 * @param catalogueSource how the caller gave the catalogue, for pointers
 * @param timeCourses asks for the course of every DC bus over time; none is drawn if absent
 */
public record StudyRequest(
        CodeBasis codeBasis,
        Catalogue catalogue,
        Design design,
        CatalogueSource catalogueSource,
        @Nullable TimeCourses timeCourses) {

    /** A study that draws nothing. */
    public StudyRequest(CodeBasis codeBasis, Catalogue catalogue, Design design, CatalogueSource catalogueSource) {
        this(codeBasis, catalogue, design, catalogueSource, null);
    }

    /** A study that buys from a catalogue sent along. */
    public StudyRequest(CodeBasis codeBasis, Catalogue catalogue, Design design) {
        this(codeBasis, catalogue, design, CatalogueSource.SENT);
    }
}
