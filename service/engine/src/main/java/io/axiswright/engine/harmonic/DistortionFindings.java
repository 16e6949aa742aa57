package io.axiswright.engine.harmonic;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.CurrentDistortionLimits;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.VoltageDistortionLimits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What is to be said of distortion: the worst order of the worst line, and the worst totals.
 *
 * @param limits of the currents
 * @param pointer JSON Pointer to the point of common coupling
 */
record DistortionFindings(CurrentDistortionLimits limits, String pointer) {

    List<Finding> of(List<LineDistortion> lines) {
        List<Finding> findings = new ArrayList<>();
        List<HarmonicOrder> orders =
                lines.stream().flatMap(line -> line.orders().stream()).toList();
        HarmonicOrder worst = orders.stream()
                .max(Comparator.comparingDouble(o -> o.share() / o.limit()))
                .orElseThrow();
        if (!Limits.within(worst.share(), worst.limit())) {
            findings.add(FindingCode.HARMONIC_ORDER_HIGH.at(
                    "order " + worst.order(),
                    pointer,
                    limits.order(worst.order()).source().told(),
                    new Ratio(worst.share()),
                    new Ratio(worst.limit())));
        }
        double demand = lines.stream()
                .mapToDouble(LineDistortion::demandDistortion)
                .max()
                .orElseThrow();
        var total = limits.total();
        if (!Limits.within(demand, total.value().si())) {
            findings.add(FindingCode.HARMONIC_DEMAND_DISTORTION_HIGH.at(
                    "the machine", pointer, total.source().told(), new Ratio(demand), total.value()));
        }
        double voltage = lines.stream()
                .mapToDouble(LineDistortion::voltageDistortion)
                .max()
                .orElseThrow();
        double individual =
                orders.stream().mapToDouble(HarmonicOrder::voltageShare).max().orElseThrow();
        var whole = VoltageDistortionLimits.total();
        var single = VoltageDistortionLimits.individual();
        if (!Limits.within(voltage, whole.value().si())) {
            findings.add(FindingCode.HARMONIC_VOLTAGE_DISTORTION_HIGH.at(
                    "all orders together", pointer, whole.source().told(), new Ratio(voltage), whole.value()));
        } else if (!Limits.within(individual, single.value().si())) {
            findings.add(FindingCode.HARMONIC_VOLTAGE_DISTORTION_HIGH.at(
                    "a single order", pointer, single.source().told(), new Ratio(individual), single.value()));
        }
        return List.copyOf(findings);
    }
}
