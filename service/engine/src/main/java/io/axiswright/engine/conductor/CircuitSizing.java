package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Ratio;
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
        Outlook outlook = outlook(circuit, basis, 1);
        return switch (outlook) {
            case Gap gap -> beyondTables(circuit, gap);
            case Judge judge -> tryAll(circuit, basis, judge);
        };
    }

    private static Outlook outlook(Circuit circuit, CodeBasis basis, int parallel) {
        return switch (basis) {
            case NFPA_79 -> NecJudge.of(circuit, parallel);
            case IEC_60204_1 -> IecJudge.of(circuit, parallel);
        };
    }

    private static Sized beyondTables(Circuit circuit, Gap gap) {
        var conductors = new CircuitConductors(
                circuit.id(),
                null,
                1,
                NeutralLoading.current(circuit),
                circuit.deviceRating(),
                null,
                null,
                null,
                null,
                gap.limit(),
                gap.clause(),
                gap.clause(),
                List.of());
        return new Sized(circuit, conductors, null, null, gap, List.of(), List.of());
    }

    /** Single conductors first, then ever more in parallel while the caller allows and the tables reach. */
    private static Sized tryAll(Circuit circuit, CodeBasis basis, Judge single) {
        var tried = new ArrayList<Trial>();
        Integer limit = circuit.parallelLimit();
        Needed needed = null;
        Breach last = null;
        Judge judge = single;
        for (int parallel = 2; ; parallel++) {
            for (int k = 0; k < judge.count(); k++) {
                Breach breach = judge.breach(k);
                if (needed == null && (breach == null || breach.limit().beyondAmpacity())) {
                    needed = new Needed(judge.parallel(), k);
                }
                tried.add(Trial.of(judge, k, breach));
                if (breach == null && needed != null) {
                    return chosen(circuit, judge, k, needed, last, tried);
                }
                last = breach;
            }
            if (limit == null || parallel > limit || !(outlook(circuit, basis, parallel) instanceof Judge more)) {
                return none(circuit, judge, last, tried);
            }
            judge = more;
        }
    }

    private static Sized chosen(
            Circuit circuit, Judge judge, int k, Needed needed, @Nullable Breach last, List<Trial> tried) {
        Ampacity ampacity = judge.ampacity(k);
        double volts = Drops.volts(circuit, judge.impedance(k));
        Optional<Sourced<ConductorSize>> protective = judge.protectiveConductor(k, needed);
        var conductors = new CircuitConductors(
                circuit.id(),
                judge.size(k),
                judge.parallel(),
                NeutralLoading.current(circuit),
                judge.device().rating(),
                protective.map(Sourced::value).orElse(null),
                ampacity.corrected(),
                new Voltage(volts),
                volts / circuit.voltage().si(),
                last == null ? Limit.CODE_MINIMUM : last.limit(),
                last == null ? ampacity.base().clause() : last.clause(),
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
                judge.parallel(),
                NeutralLoading.current(circuit),
                judge.device().rating(),
                null,
                null,
                null,
                null,
                last.limit(),
                last.clause(),
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
        Sourced<Ratio> neutral = ampacity.neutral();
        if (neutral != null) {
            addNew(neutral.source(), sources);
        }
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
