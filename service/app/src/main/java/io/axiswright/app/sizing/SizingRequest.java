package io.axiswright.app.sizing;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.engine.braking.TimeCourses;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import org.jspecify.annotations.Nullable;

/**
 * A design to be worked out. It buys from a stored catalogue or from one sent along; exactly one of the two is given.
 *
 * @param codeBasis the electrical code to follow
 * @param catalogue a stored catalogue to buy from
 * @param inlineCatalogue a catalogue sent along to buy from
 * @param design the machine
 * @param timeCourses asks for the course of every DC bus over time, to be drawn; none is drawn if absent
 */
public record SizingRequest(
        CodeBasis codeBasis,
        @Nullable CatalogueReference catalogue,
        @Nullable Catalogue inlineCatalogue,
        Design design,
        @Nullable TimeCourses timeCourses) {}
