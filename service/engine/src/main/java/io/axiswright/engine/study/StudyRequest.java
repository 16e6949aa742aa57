package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;

/**
 * What a study is made from.
 *
 * @param codeBasis the electrical code to follow
 * @param catalogue what can be bought
 * @param design the machine
 */
public record StudyRequest(CodeBasis codeBasis, Catalogue catalogue, Design design) {}
