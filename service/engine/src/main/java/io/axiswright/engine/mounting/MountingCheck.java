package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.FasteningKind;
import io.axiswright.engine.design.MountingKind;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Checks how drive units are held and joined to the machine: what each shaft fastening carries against the greatest torque of
 * cycle, stop and brake and against reversals, and whether feet bring the shaft to the height the machine asks for.
 */
public final class MountingCheck {

    /**
     * Checks every mounting.
     *
     * @throws InvalidDesign if a foot-mounted axis does not say its shaft height
     */
    public MountingResult check(MountingRequest request) {
        refuse(request);
        List<AxisMounting> axes = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<Derivation> derivations = new ArrayList<>();
        Set<String> heldByFace = new HashSet<>();
        for (MountedAxis axis : request.axes()) {
            FasteningCheck check = FasteningCheck.of(axis);
            MountingFindings remarks = new MountingFindings(axis);
            remarks.fastening(check);
            derivations.add(required(check));
            check.capacity().ifPresent(capacity -> derivations.add(capacity.derivation(axis.axis())));
            axes.add(mounting(request, check, remarks));
            // drawings are compared for each type of drive unit, on however many axes it is
            if (seatHeight(axis) == null && heldByFace.add(axis.driveUnit().id())) {
                remarks.face();
            }
            findings.addAll(remarks.all());
        }
        return new MountingResult(axes, findings, derivations);
    }

    private static AxisMounting mounting(MountingRequest request, FasteningCheck check, MountingFindings remarks) {
        MountedAxis axis = check.axis();
        var part = Parts.fastening(request.fasteningParts(), check);
        if (part.isEmpty() && check.kind() != FasteningKind.INTERFERENCE) {
            remarks.partMissing();
        }
        Optional<FootFit> feet = feet(request, axis, remarks);
        return new AxisMounting(
                axis.axis(),
                check.kind(),
                check.verdict(),
                check.required(),
                axis.decidingLoad(),
                check.capacity().map(Capacity::torque).orElse(null),
                check.capacity().map(Capacity::mode).orElse(null),
                check.key().map(key -> key.size().width()).orElse(null),
                check.key().map(key -> key.size().height()).orElse(null),
                part.map(p -> p.id()).orElse(null),
                feet.map(fit -> fit.kit().id()).orElse(null),
                feet.flatMap(FootFit::packing).orElse(null),
                check.alternatives());
    }

    private static Optional<FootFit> feet(MountingRequest request, MountedAxis axis, MountingFindings remarks) {
        Length height = seatHeight(axis);
        if (height == null) {
            return Optional.empty();
        }
        Optional<FootFit> fit = FootFit.of(axis.driveUnit().frameSize(), height, request.footKits());
        remarks.feet(fit, height);
        return fit;
    }

    /** The shaft height that its feet have to bring; null if it is held by its face. */
    private static @Nullable Length seatHeight(MountedAxis axis) {
        return axis.mounting().kind() == MountingKind.FACE
                ? null
                : axis.mounting().shaftHeight();
    }

    private static Derivation required(FasteningCheck check) {
        MountedAxis axis = check.axis();
        return new Derivation(
                axis.axis(),
                "T_required",
                "S · |T|, T the greatest of peak of the cycle, hardest controlled stop, torque of the holding brake",
                Derivation.inputs(
                        "S", new Ratio(axis.mounting().safetyFactor()), "T", new Torque(axis.greatestTorque())),
                "common practice, no source",
                check.required());
    }

    private static void refuse(MountingRequest request) {
        List<Fault> faults = IntStream.range(0, request.axes().size())
                .filter(k -> request.axes().get(k).mounting().kind() == MountingKind.FOOT
                        && request.axes().get(k).mounting().shaftHeight() == null)
                .mapToObj(k -> new Fault(
                        "/design/axes/" + request.axes().get(k).axisIndex() + "/mounting/shaftHeight",
                        FaultCode.MISSING,
                        "axis " + request.axes().get(k).axis() + " stands on feet",
                        "the height of the driven shaft above the seat of the feet"))
                .toList();
        if (!faults.isEmpty()) {
            throw new InvalidDesign(faults);
        }
    }
}
