package io.axiswright.engine.enclosure;

import io.axiswright.engine.design.Enclosure;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.ThermalResistance;
import io.axiswright.engine.quantity.VolumeFlow;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.SurfaceFactors;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Balances the heat of enclosures: {@code P = (k·A + ρ·c·V + 1/R)·ΔT}, the mean temperature rise of the air inside over that
 * outside. Air is taken as mixed; near the top and above hot items it is warmer.
 */
public final class HeatBalance {

    /** Painted sheet steel, W/(m²·K): uniklima.com.br/ingles2/dimensionar1.html and a second page. */
    private static final double PAINTED_STEEL = 5.5;

    private static final String CLAUSE = "common practice: P = k·A·ΔT, k of painted sheet steel 5.5 W/(m²·K)";

    /** Balances every enclosure. */
    public EnclosureResult balance(EnclosureRequest request) {
        List<EnclosureBalance> balances = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<Derivation> derivations = new ArrayList<>();
        for (EnclosedHeat heat : request.enclosures()) {
            EnclosureBalance balance = balance(request.site(), heat);
            balances.add(balance);
            derivations.add(derivation(request.site(), heat.enclosure(), balance));
            if (!heat.unknown().isEmpty()) {
                findings.add(FindingCode.ENCLOSURE_LOSS_UNKNOWN.at(
                        String.join(", ", heat.unknown()) + " at " + balance.place(),
                        heat.pointer(),
                        CLAUSE,
                        new Ratio(heat.unknown().size()),
                        new Ratio(heat.unknown().size() + heat.sources().size())));
            }
            if (!Limits.within(balance.insideTemperature().si(), balance.limit().si())) {
                findings.add(FindingCode.ENCLOSURE_TOO_HOT.at(
                        balance.place(), heat.pointer(), CLAUSE, balance.insideTemperature(), balance.limit()));
            }
        }
        return new EnclosureResult(List.copyOf(balances), List.copyOf(findings), List.copyOf(derivations));
    }

    private static EnclosureBalance balance(Site site, EnclosedHeat heat) {
        Enclosure enclosure = heat.enclosure();
        double losses = heat.sources().stream().mapToDouble(s -> s.power().si()).sum();
        double area = area(enclosure);
        double closed = transfer(enclosure) * area + exchange(enclosure.exchanger());
        double carried = closed + blown(site, enclosure.airFlow());
        double allowed = site.enclosureAmbient().si() - site.ambient().si();
        return new EnclosureBalance(
                enclosure.place(),
                heat.sources(),
                new Power(losses),
                new Area(area),
                new Temperature(site.ambient().si() + losses / carried),
                site.enclosureAmbient(),
                new Power(Math.max(0, carried * allowed)),
                allowed > 0 ? new VolumeFlow(Math.max(0, losses / allowed - closed) / Air.heatCapacity(site)) : null);
    }

    private static double transfer(Enclosure enclosure) {
        Double stated = enclosure.heatTransfer();
        return stated == null ? PAINTED_STEEL : stated;
    }

    private static double exchange(@Nullable ThermalResistance exchanger) {
        return exchanger == null ? 0 : 1 / exchanger.si();
    }

    private static double blown(Site site, @Nullable VolumeFlow flow) {
        return flow == null ? 0 : Air.heatCapacity(site) * flow.si();
    }

    /** The effective surface by IEC TR 60890; the floor does not count. */
    private static double area(Enclosure enclosure) {
        double width = enclosure.width().si();
        double height = enclosure.height().si();
        double depth = enclosure.depth().si();
        Integer covered = enclosure.coveredSides();
        int coveredSides = covered == null ? 0 : covered;
        return width
                        * depth
                        * SurfaceFactors.top(enclosure.topCovered()).value().si()
                + width * height * (wall(false) + wall(enclosure.rearCovered()))
                + depth * height * (coveredSides * wall(true) + (2 - coveredSides) * wall(false));
    }

    private static double wall(boolean covered) {
        return SurfaceFactors.wall(covered).value().si();
    }

    private static Derivation derivation(Site site, Enclosure enclosure, EnclosureBalance balance) {
        double rise = balance.insideTemperature().si() - site.ambient().si();
        var inputs = new LinkedHashMap<String, Quantity>();
        inputs.put("P", balance.losses());
        inputs.put("A", balance.effectiveArea());
        inputs.put(
                "R_w",
                new ThermalResistance(
                        1 / (transfer(enclosure) * balance.effectiveArea().si())));
        VolumeFlow flow = enclosure.airFlow();
        if (flow != null) {
            inputs.put("V", flow);
        }
        ThermalResistance exchanger = enclosure.exchanger();
        if (exchanger != null) {
            inputs.put("R_x", exchanger);
        }
        return new Derivation(
                balance.place(),
                "ΔT",
                "P / (1/R_w + ρ·c·V + 1/R_x), R_w = 1/(k·A)",
                inputs,
                CLAUSE + "; A by " + SurfaceFactors.top(false).source().told() + "; " + Air.CLAUSE,
                new TemperatureRise(rise));
    }
}
