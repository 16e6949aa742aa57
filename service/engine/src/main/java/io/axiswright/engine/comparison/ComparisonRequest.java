package io.axiswright.engine.comparison;

import io.axiswright.engine.study.StudyRequest;

/**
 * What is to be compared.
 *
 * @param before the first study
 * @param after the second study
 * @param budget most studies to spend on finding causes; two are needed per input change
 */
public record ComparisonRequest(StudyRequest before, StudyRequest after, int budget) {}
