package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.ProtectiveConductors;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Tries the sizes of one circuit from the thinnest up. */
final class CircuitSizing {

    private static final int SOURCES = 12;

    private CircuitSizing() {}

    static Sized size(Circuit circuit, CodeBasis basis) {
        Outlook outlook = switch (basis) {
            case NFPA_79 -> NecJudge.of(circuit);
            case IEC_60204_1 -> IecJudge.of(circuit);
        };
        return switch (outlook) {
            case Gap gap -> beyondTables(circuit, gap);
            case Judge judge -> tryAll(circuit, judge);
        };
    }

    private static Sized beyondTables(Circuit circuit, Gap gap) {
        var conductors = new CircuitConductors(
                circuit.id(),
                null,
                circuit.deviceRating(),
                null,
                null,
                null,
                null,
                gap.limit(),
                gap.clause(),
                List.of());
        return new Sized(circuit, conductors, null, null, gap, List.of(), List.of());
    }

    private static Sized tryAll(Circuit circuit, Judge judge) {
        var tried = new ArrayList<Trial>();
        Breach last = null;
        int needed = -1;
        for (int k = 0; k < judge.count(); k++) {
            Breach breach = judge.breach(k);
            if (needed < 0 && (breach == null || breach.limit().beyondAmpacity())) {
                needed = k;
            }
            if (breach == null) {
                tried.add(new Trial(judge.size(k), null, null, null));
                return chosen(circuit, judge, k, needed, last, tried);
            }
            tried.add(new Trial(judge.size(k), breach.limit(), breach.value(), breach.bound()));
            last = breach;
        }
        return none(circuit, judge, last, tried);
    }

    private static Sized chosen(
            Circuit circuit, Judge judge, int k, int needed, @Nullable Breach last, List<Trial> tried) {
        Ampacity ampacity = judge.ampacity(k);
        double volts = Drops.volts(circuit, judge.impedance(k));
        Optional<Sourced<ConductorSize>> protective = judge.protectiveConductor(k, needed);
        var conductors = new CircuitConductors(
                circuit.id(),
                judge.size(k),
                judge.device().rating(),
                protective.map(Sourced::value).orElse(null),
                ampacity.corrected(),
                new Voltage(volts),
                volts / circuit.voltage().si(),
                last == null ? Limit.CODE_MINIMUM : last.limit(),
                ampacity.base().clause(),
                tried);
        Gap gap = protective.isPresent()
                ? null
                : new Gap(
                        "deviceRating",
                        judge.device().rating(),
                        ProtectiveConductors.largestDevice(),
                        Limit.DEVICE_COORDINATION,
                        "NFPA 70:2023 Table 250.122");
        return new Sized(
                circuit,
                conductors,
                judge.device(),
                null,
                gap,
                sources(circuit, judge, k, protective),
                ConductorDerivations.of(circuit, judge, k));
    }

    private static Sized none(Circuit circuit, Judge judge, @Nullable Breach last, List<Trial> tried) {
        if (last == null) {
            throw new IllegalStateException("no sizes for " + circuit.method());
        }
        var conductors = new CircuitConductors(
                circuit.id(),
                null,
                judge.device().rating(),
                null,
                null,
                null,
                null,
                last.limit(),
                judge.ampacity(judge.count() - 1).base().clause(),
                tried);
        return new Sized(
                circuit,
                conductors,
                judge.device(),
                last,
                null,
                sources(circuit, judge, judge.count() - 1, Optional.empty()),
                List.of());
    }

    private static List<Source> sources(
            Circuit circuit, Judge judge, int k, Optional<Sourced<ConductorSize>> protective) {
        // a dozen at most: searching a list is faster than hashing records
        var sources = new ArrayList<Source>(SOURCES);
        Ampacity ampacity = judge.ampacity(k);
        addNew(ampacity.base().source(), sources);
        addNew(ampacity.ambient().source(), sources);
        addNew(ampacity.together().source(), sources);
        Source device = judge.device().source();
        if (device != null) {
            addNew(device, sources);
        }
        addNew(judge.impedance(k).source(), sources);
        judge.rules(k).forEach(rule -> addNew(rule, sources));
        if (circuit.prospectiveFaultCurrent() != null) {
            addNew(FaultWithstand.factor(circuit, judge.area(k)).source(), sources);
        }
        protective.ifPresent(p -> addNew(p.source(), sources));
        return List.copyOf(sources);
    }

    private static void addNew(Source source, List<Source> sources) {
        if (!sources.contains(source)) {
            sources.add(source);
        }
    }
}
