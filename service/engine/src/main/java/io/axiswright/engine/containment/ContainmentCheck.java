package io.axiswright.engine.containment;

import io.axiswright.engine.design.ClampingRange;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.BendRadii;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.Sourced;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Holds the cables of every route against what encloses them, its bends and its glands. */
public final class ContainmentCheck {

    private static final String GLAND = "IEC 62444:2010 (clamping range of cable glands; from memory)";
    private static final String FLEXING = "IEC 60204-1:2016 12.2, NFPA 79:2021 12.7 (from memory)";
    private static final String JAM = "NFPA 70:2023 Chapter 9 Table 1 informational note 2";

    /** The bend a cable needs, and why. */
    private record Bend(RoutedCable cable, Length radius, Sourced<Ratio> multiple) {}

    /**
     * Examines every route.
     *
     * @throws io.axiswright.engine.finding.InvalidDesign if a conduit has a size that does not exist
     */
    public ContainmentResult check(ContainmentRequest request) {
        List<RouteUse> uses = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<Derivation> derivations = new ArrayList<>();
        for (RoutedStretch stretch : request.stretches()) {
            Filling filling = Filling.of(request.codeBasis(), stretch);
            Bend bend = widestBend(request.codeBasis(), stretch);
            uses.add(use(stretch, filling, bend));
            if (filling != null) {
                judge(request.codeBasis(), stretch, filling, findings);
                derivations.add(fill(stretch.route().id(), filling));
            }
            if (bend != null) {
                judge(stretch, bend, findings);
                derivations.add(bend(stretch.route().id(), bend));
            }
            judgeFlexing(stretch, findings);
            judgeGlands(stretch, findings);
            unknown(stretch, findings);
        }
        return new ContainmentResult(List.copyOf(uses), List.copyOf(findings), List.copyOf(derivations));
    }

    private static RouteUse use(RoutedStretch stretch, @Nullable Filling filling, @Nullable Bend bend) {
        var containment = stretch.route().containment();
        return new RouteUse(
                stretch.route().id(),
                stretch.cables(),
                stretch.cables().stream()
                        .mapToInt(RoutedCable::loadedConductors)
                        .sum(),
                filling == null ? null : filling.share(),
                filling == null ? null : filling.limit().value().si(),
                filling == null ? null : filling.clause(),
                filling == null || containment == null ? null : filling.smallest(containment),
                bend == null ? null : bend.radius());
    }

    /** Under NFPA 70 the fill is a rule, under IEC good practice. */
    private static void judge(CodeBasis basis, RoutedStretch stretch, Filling filling, List<Finding> findings) {
        String pointer = stretch.pointer() + "/containment";
        if (filling.exceeded()) {
            boolean rule = basis == CodeBasis.NFPA_79 || filling.share() > 1;
            findings.add((rule ? FindingCode.CONTAINMENT_OVERFILLED : FindingCode.CONTAINMENT_FILL_HIGH)
                    .at(
                            stretch.route().id(),
                            pointer,
                            filling.clause(),
                            new Ratio(filling.share()),
                            filling.limit().value()));
        }
        Ratio jam = filling.jam();
        if (jam != null) {
            findings.add(FindingCode.CONTAINMENT_CABLES_JAM.at(stretch.route().id(), pointer, JAM, jam, null));
        }
    }

    private static void judge(RoutedStretch stretch, Bend bend, List<Finding> findings) {
        Length stated = stretch.route().bendRadius();
        if (stated != null && !Limits.within(bend.radius().si(), stated.si())) {
            findings.add(FindingCode.CONTAINMENT_BEND_TIGHT.at(
                    bend.cable().load() + " on " + stretch.route().id(),
                    stretch.pointer() + "/bendRadius",
                    bend.multiple().source().told(),
                    stated,
                    bend.radius()));
        }
    }

    private static @Nullable Bend widestBend(CodeBasis basis, RoutedStretch stretch) {
        return stretch.cables().stream()
                .map(cable -> bend(basis, cable, stretch.route().moving()))
                .max(Comparator.comparingDouble(b -> b.radius().si()))
                .orElse(null);
    }

    private static Bend bend(CodeBasis basis, RoutedCable cable, boolean moving) {
        BendRadii.Use use = BendRadii.Use.FIXED;
        if (moving) {
            use = BendRadii.Use.MOVING;
        } else if (cable.flexible()) {
            use = BendRadii.Use.FLEXIBLE;
        }
        Sourced<Ratio> multiple = BendRadii.multiple(basis, use, cable.outerDiameter());
        return new Bend(
                cable, new Length(multiple.value().si() * cable.outerDiameter().si()), multiple);
    }

    private static void judgeFlexing(RoutedStretch stretch, List<Finding> findings) {
        List<RoutedCable> stiff =
                stretch.cables().stream().filter(cable -> !cable.flexible()).toList();
        if (stretch.route().moving() && !stiff.isEmpty()) {
            findings.add(FindingCode.CONTAINMENT_CABLE_STIFF.at(
                    stretch.route().id() + " ("
                            + stiff.stream().map(RoutedCable::load).collect(Collectors.joining(", ")) + ")",
                    stretch.pointer() + "/moving",
                    FLEXING,
                    new Ratio(stiff.size()),
                    new Ratio(stretch.cables().size())));
        }
    }

    private static void judgeGlands(RoutedStretch stretch, List<Finding> findings) {
        ClampingRange gland = stretch.route().gland();
        if (gland == null) {
            return;
        }
        for (RoutedCable cable : stretch.cables()) {
            double diameter = cable.outerDiameter().si();
            boolean thin = !Limits.within(gland.minimum().si(), diameter);
            if (thin || !Limits.within(diameter, gland.maximum().si())) {
                findings.add(FindingCode.CONTAINMENT_GLAND_MISFIT.at(
                        cable.load() + " on " + stretch.route().id(),
                        stretch.pointer() + (thin ? "/gland/minimum" : "/gland/maximum"),
                        GLAND,
                        cable.outerDiameter(),
                        thin ? gland.minimum() : gland.maximum()));
            }
        }
    }

    private static void unknown(RoutedStretch stretch, List<Finding> findings) {
        if (!stretch.unknown().isEmpty()) {
            findings.add(FindingCode.CONTAINMENT_CABLES_UNKNOWN.at(
                    stretch.route().id() + " (" + String.join(", ", stretch.unknown()) + ")",
                    stretch.pointer(),
                    "completeness",
                    new Ratio(stretch.unknown().size()),
                    new Ratio(stretch.unknown().size() + stretch.cables().size())));
        }
    }

    private static Derivation fill(String route, Filling filling) {
        return new Derivation(
                route,
                "fill",
                "sum of pi/4·D² / A",
                Derivation.inputs("sum of pi/4·D²", filling.cables(), "A", filling.inside()),
                filling.clause(),
                new Ratio(filling.share()));
    }

    private static Derivation bend(String route, Bend bend) {
        return new Derivation(
                route,
                "r",
                "m·D",
                Derivation.inputs(
                        "m", bend.multiple().value(), "D", bend.cable().outerDiameter()),
                bend.multiple().source().told(),
                bend.radius());
    }
}
