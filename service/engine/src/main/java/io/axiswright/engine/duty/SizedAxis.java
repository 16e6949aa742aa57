package io.axiswright.engine.duty;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * One axis of the result.
 *
 * @param duty what it asks of its drive unit, and which it gets
 * @param findings what is to be said about it
 * @param derivations how its deciding numbers came about
 */
record SizedAxis(AxisDuty duty, List<Finding> findings, List<Derivation> derivations) {}
