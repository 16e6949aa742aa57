package io.axiswright.app.sizing;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.engine.braking.TimeCourses;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.study.OtherMarket;
import org.jspecify.annotations.Nullable;

/**
 * A design to be worked out. It buys from a stored catalogue or from one sent along; exactly one of the two is given.
 *
 * @param codeBasis the electrical code to follow
 * @param catalogue a stored catalogue to buy from
 * @param inlineCatalogue a catalogue sent along to buy from
 * @param design the machine
 * @param timeCourses asks for the course of every DC bus over time, to be drawn; none is drawn if absent
 * @param otherMarket another market the same machine is to be sold in: {@code /v1/sizing/system} answers for it as well and
 *     lists what is different there. One market if absent; the other sizing endpoints do not look at it
 */
public record SizingRequest(
        CodeBasis codeBasis,
        @Nullable CatalogueReference catalogue,
        @Nullable Catalogue inlineCatalogue,
        Design design,
        @Nullable TimeCourses timeCourses,
        @Nullable OtherMarket otherMarket) {}
