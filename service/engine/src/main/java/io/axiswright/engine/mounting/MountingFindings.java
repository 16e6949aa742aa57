package io.axiswright.engine.mounting;

import static io.axiswright.engine.finding.FindingCode.MOUNTING_BOND_REVERSAL;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_CLAMP_SCATTER;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_FACE_FIT;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_FASTENING_SLIPS;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_FOOT_KIT_NONE;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_FOOT_PACKING;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_HUB_YIELDS;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_KEY_LENGTH;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_KEY_REVERSAL;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_KEY_SIZE_NONE;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_PART_NONE;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_SEAT_HIGH;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_SET_SCREW_REVERSAL;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_SET_SCREW_SAFETY;
import static io.axiswright.engine.finding.FindingCode.MOUNTING_SHAFT_SHORT;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.FasteningKind;
import io.axiswright.engine.design.BondedFastening;
import io.axiswright.engine.design.BushingFastening;
import io.axiswright.engine.design.ClampFastening;
import io.axiswright.engine.design.InterferenceFastening;
import io.axiswright.engine.design.SetScrewFastening;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What there is to remark about the mounting of one axis. */
final class MountingFindings {

    private static final String PRACTICE = "common practice, no source";
    private static final String MOUNTING_CODES = "IEC 60034-7 (IM B3, IM B14)";

    private final MountedAxis axis;
    private final List<Finding> findings = new ArrayList<>();

    MountingFindings(MountedAxis axis) {
        this.axis = axis;
    }

    List<Finding> all() {
        return findings;
    }

    void fastening(FasteningCheck check) {
        Torque required = check.required();
        Length shaft = axis.driveUnit().shaftLength();
        check.engagedLength()
                .filter(length -> length.si() > shaft.si())
                .ifPresent(length -> add(MOUNTING_SHAFT_SHORT, "catalogue data of the item", length, shaft));
        switch (check.verdict()) {
            case UNKNOWN ->
                add(
                        MOUNTING_KEY_SIZE_NONE,
                        "ISO/R 773, DIN 6885-1; ASME B17.1",
                        axis.driveUnit().shaftDiameter(),
                        null);
            case TOO_WEAK ->
                check.capacity()
                        .ifPresent(held -> add(MOUNTING_FASTENING_SLIPS, held.clause(), required, held.torque()));
            case UNFIT_FOR_REVERSAL ->
                add(
                        check.kind() == FasteningKind.KEY ? MOUNTING_KEY_REVERSAL : MOUNTING_SET_SCREW_REVERSAL,
                        PRACTICE,
                        required,
                        check.frictionBesideKey());
            case HOLDS -> margins(check);
        }
        hubStress();
        check.key()
                .filter(key -> key.fastening().engagedLength().si()
                        > key.longestLength().si())
                .ifPresent(key -> add(
                        MOUNTING_KEY_LENGTH,
                        "Shigley's Mechanical Engineering Design 9th ed. p. 391",
                        key.fastening().engagedLength(),
                        key.longestLength()));
    }

    /** A hub that yields has lost part of its grip. */
    private void hubStress() {
        if (axis.mounting().fastening() instanceof InterferenceFastening fit && fit.hubYieldStrength() != null) {
            Pressure stress = new ShaftFit(fit, axis.driveUnit().shaftDiameter()).hubStress();
            if (stress.si() > fit.hubYieldStrength().si()) {
                add(MOUNTING_HUB_YIELDS, "Lamé's thick cylinders, handbook; Tresca", stress, fit.hubYieldStrength());
            }
        }
    }

    /** What may still be wrong with a friction or bonded joint that holds by its data. */
    private void margins(FasteningCheck check) {
        double safety = axis.mounting().safetyFactor();
        if (axis.mounting().fastening() instanceof SetScrewFastening && safety < MountingConstants.SET_SCREW_SAFETY) {
            add(
                    MOUNTING_SET_SCREW_SAFETY,
                    "Shigley's Mechanical Engineering Design 9th ed. p. 390",
                    new Ratio(safety),
                    new Ratio(MountingConstants.SET_SCREW_SAFETY));
        }
        if (axis.mounting().fastening() instanceof ClampFastening
                || axis.mounting().fastening() instanceof BushingFastening) {
            check.capacity()
                    .map(held -> new Torque(held.torque().si() * (1 - MountingConstants.PRELOAD_SCATTER)))
                    .filter(low -> low.si() < check.required().si())
                    .ifPresent(low -> add(MOUNTING_CLAMP_SCATTER, PRACTICE, check.required(), low));
        }
        if (axis.reversing()
                && axis.mounting().fastening() instanceof BondedFastening bond
                && bond.reduction() > MountingConstants.BOND_REVERSING_REDUCTION) {
            add(
                    MOUNTING_BOND_REVERSAL,
                    PRACTICE,
                    new Ratio(bond.reduction()),
                    new Ratio(MountingConstants.BOND_REVERSING_REDUCTION));
        }
    }

    void partMissing() {
        add(MOUNTING_PART_NONE, PRACTICE, axis.driveUnit().shaftDiameter(), null);
    }

    /** Of the type of drive unit, by the first axis that has it. */
    void face() {
        DriveUnit unit = axis.driveUnit();
        add(MOUNTING_FACE_FIT, unit.id(), MOUNTING_CODES, unit.shaftDiameter(), null);
    }

    void feet(Optional<FootFit> fit, Length required) {
        if (fit.isEmpty()) {
            add(MOUNTING_FOOT_KIT_NONE, MOUNTING_CODES, required, null);
            return;
        }
        Length height = fit.get().kit().shaftHeight();
        if (fit.get().isTooHigh()) {
            add(MOUNTING_SEAT_HIGH, MOUNTING_CODES, height, required);
        }
        fit.get().packing().ifPresent(packing -> add(MOUNTING_FOOT_PACKING, MOUNTING_CODES, packing, required));
    }

    private void add(FindingCode code, String clause, Quantity value, @Nullable Quantity limit) {
        add(code, axis.axis(), clause, value, limit);
    }

    private void add(FindingCode code, String subject, String clause, Quantity value, @Nullable Quantity limit) {
        findings.add(code.at(subject, "/design/axes/" + axis.axisIndex() + "/mounting", clause, value, limit));
    }
}
