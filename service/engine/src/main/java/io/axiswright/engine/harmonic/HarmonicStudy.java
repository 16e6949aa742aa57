package io.axiswright.engine.harmonic;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.CurrentDistortionLimits;
import io.axiswright.engine.standard.VoltageDistortionLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Works out the harmonic currents of uncontrolled rectifiers and holds them against limits. */
public final class HarmonicStudy {

    static final String CLAUSE = "circuit of ideal diodes, reactances and capacitor, solved exactly; no resistance";

    private static final String POINTER = "/design/commonCoupling";

    /** Studies a machine. */
    public HarmonicResult study(HarmonicRequest request) {
        List<Finding> findings = new ArrayList<>();
        List<LumpedRectifiers> lumps = LumpedRectifiers.of(request.rectifiers());
        if (!request.unknown().isEmpty()) {
            findings.add(FindingCode.HARMONIC_INPUT_UNKNOWN.at(
                    String.join(", ", request.unknown()),
                    POINTER,
                    "completeness",
                    new Ratio(request.unknown().size()),
                    new Ratio(request.unknown().size() + request.rectifiers().size())));
            return nothing(request, findings);
        }
        var network = new CouplingNetwork(request);
        var currents = new LineCurrents(request.lines());
        List<RectifierGroup> groups = new ArrayList<>();
        for (LumpedRectifiers lump : lumps) {
            Optional<Spectrum> spectrum = Spectrum.of(lump.bridge(
                    network.reactanceAtTerminals(), drawn(lump, request.rectifiers()), network.angularFrequency()));
            if (spectrum.isEmpty()) {
                findings.add(FindingCode.HARMONIC_NETWORK_WEAK.at(
                        axes(lump),
                        "/design/mains/prospectiveFaultCurrent",
                        CLAUSE,
                        request.mains().prospectiveFaultCurrent(),
                        null));
                return nothing(request, findings);
            }
            currents.add(spectrum.get(), lump.first().lines());
            groups.add(group(lump, spectrum.get()));
        }
        if (groups.isEmpty()) {
            return nothing(request, findings);
        }
        double demand = demand(request, currents);
        double ratio = network.shortCircuitCurrent() / demand;
        var limits = CurrentDistortionLimits.at(ratio);
        List<LineDistortion> lines = IntStream.range(0, request.lines().size())
                .mapToObj(line -> network.distortion(line, currents, demand, limits))
                .toList();
        findings.addAll(new DistortionFindings(limits, POINTER).of(lines));
        EquipmentEmission equipment =
                new EquipmentStudy(request, currents, network.shortCircuitCurrent(), findings).study();
        double others = request.others().stream().mapToDouble(Current::si).max().orElse(0);
        if (others > 0) {
            findings.add(FindingCode.HARMONIC_OTHERS_AS_SINES.at(
                    "the machine", POINTER, "completeness", new Current(others), null));
        }
        return new HarmonicResult(
                new Current(network.shortCircuitCurrent()),
                new Current(demand),
                ratio,
                limits.total().value().si(),
                VoltageDistortionLimits.total().value().si(),
                List.copyOf(groups),
                lines,
                equipment,
                List.copyOf(findings),
                List.of(derivation(network, demand, ratio)));
    }

    /** What the rectifiers on the same lines draw together, W. */
    private static double drawn(LumpedRectifiers lump, List<Rectifier> all) {
        return all.stream()
                .filter(r -> r.lines().equals(lump.first().lines()))
                .mapToDouble(r -> r.power().si())
                .sum();
    }

    private static String axes(LumpedRectifiers lump) {
        return String.join(", ", lump.rectifiers().stream().map(Rectifier::axis).toList());
    }

    private static HarmonicResult nothing(HarmonicRequest request, List<Finding> findings) {
        return new HarmonicResult(
                new Current(new CouplingNetwork(request).shortCircuitCurrent()),
                null,
                null,
                null,
                VoltageDistortionLimits.total().value().si(),
                List.of(),
                List.of(),
                null,
                List.copyOf(findings),
                List.of());
    }

    private static RectifierGroup group(LumpedRectifiers lump, Spectrum spectrum) {
        double fundamental = spectrum.order(1).magnitude() / Math.sqrt(2);
        double distortion = spectrum.distortion();
        double current = fundamental * Math.sqrt(1 + distortion * distortion);
        double phases = lump.first().threePhase() ? Math.sqrt(3) : 1;
        return new RectifierGroup(
                lump.rectifiers().stream().map(Rectifier::axis).toList(),
                lump.first().lines(),
                new Power(lump.power()),
                new Current(fundamental),
                new Current(current),
                distortion,
                lump.power() / (phases * lump.first().voltage().si() * current));
    }

    /** The stated demand current, or that of the machine on its heaviest line. */
    private static double demand(HarmonicRequest request, LineCurrents currents) {
        Current stated = request.coupling().demandCurrent();
        return stated != null
                ? stated.si()
                : IntStream.range(0, request.lines().size())
                        .mapToDouble(line -> currents.effective(line, 1)
                                + request.others().get(line).si())
                        .max()
                        .orElseThrow();
    }

    private static Derivation derivation(CouplingNetwork network, double demand, double ratio) {
        return new Derivation(
                "point of common coupling",
                "I_sc/I_L",
                "I_sc / I_L",
                Derivation.inputs("I_sc", new Current(network.shortCircuitCurrent()), "I_L", new Current(demand)),
                CurrentDistortionLimits.at(ratio).total().source().told(),
                new Ratio(ratio));
    }
}
