package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.FasteningKind;
import io.axiswright.engine.design.BondedFastening;
import io.axiswright.engine.design.BushingFastening;
import io.axiswright.engine.design.ClampFastening;
import io.axiswright.engine.design.Fastening;
import io.axiswright.engine.design.InterferenceFastening;
import io.axiswright.engine.design.KeyFastening;
import io.axiswright.engine.design.SetScrewFastening;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One shaft fastening held against the torque it must carry.
 *
 * @param axis the axis
 * @param key its key, if it is keyed and there is one for the shaft
 */
record FasteningCheck(MountedAxis axis, Optional<ShaftKey> key) {

    static FasteningCheck of(MountedAxis axis) {
        Optional<ShaftKey> key = axis.mounting().fastening() instanceof KeyFastening stated
                ? ShaftKey.of(axis.driveUnit().shaftDiameter(), stated)
                : Optional.empty();
        return new FasteningCheck(axis, key);
    }

    FasteningKind kind() {
        return switch (fastening()) {
            case KeyFastening k -> FasteningKind.KEY;
            case SetScrewFastening s -> FasteningKind.SET_SCREW;
            case BushingFastening b -> FasteningKind.BUSHING;
            case InterferenceFastening i -> FasteningKind.INTERFERENCE;
            case ClampFastening c -> FasteningKind.CLAMP;
            case BondedFastening b -> FasteningKind.BONDED;
        };
    }

    /** The greatest torque times the safety factor. */
    Torque required() {
        return new Torque(axis.greatestTorque() * axis.mounting().safetyFactor());
    }

    Optional<Capacity> capacity() {
        return switch (fastening()) {
            case KeyFastening k -> key.map(ShaftKey::capacity);
            case SetScrewFastening screws -> Optional.of(FrictionAndBond.setScrews(screws, diameter()));
            case ClampFastening clamp -> Optional.of(FrictionAndBond.clamp(clamp, diameter()));
            case BushingFastening bushing -> Optional.of(FrictionAndBond.bushing(bushing, diameter()));
            case InterferenceFastening fit -> Optional.of(new ShaftFit(fit, diameter()).capacity());
            case BondedFastening bond -> Optional.of(FrictionAndBond.bond(bond, diameter()));
        };
    }

    /** Length of shaft the fastening takes up; clamps, bushings and set screws do not state it. */
    Optional<Length> engagedLength() {
        return switch (fastening()) {
            case KeyFastening k -> Optional.of(k.engagedLength());
            case InterferenceFastening i -> Optional.of(i.engagedLength());
            case SetScrewFastening s -> Optional.empty();
            case ClampFastening c -> Optional.empty();
            case BushingFastening b -> Optional.empty();
            case BondedFastening b -> Optional.of(b.engagedLength());
        };
    }

    FasteningVerdict verdict() {
        Optional<Capacity> capacity = capacity();
        if (capacity.isEmpty()) {
            return FasteningVerdict.UNKNOWN;
        }
        if (capacity.get().torque().si() < required().si()) {
            return FasteningVerdict.TOO_WEAK;
        }
        return axis.reversing() && !bearsReversal() ? FasteningVerdict.UNFIT_FOR_REVERSAL : FasteningVerdict.HOLDS;
    }

    /** A key moves through its clearance unless friction carries all, set screws creep. */
    private boolean bearsReversal() {
        return switch (fastening()) {
            case KeyFastening k -> frictionBesideKey().si() >= required().si();
            case SetScrewFastening s -> false;
            case ClampFastening c -> true;
            case BushingFastening b -> true;
            case InterferenceFastening i -> true;
            case BondedFastening b -> true;
        };
    }

    /** What friction carries beside a key; nothing where there is no key. */
    Torque frictionBesideKey() {
        return fastening() instanceof KeyFastening key && key.frictionTorque() != null
                ? key.frictionTorque()
                : new Torque(0);
    }

    /** What would hold instead, and why: the same fastening made longer or tighter, and a clamp hub of plain steel. */
    List<FasteningAlternative> alternatives() {
        List<FasteningAlternative> found = new ArrayList<>();
        if (verdict() == FasteningVerdict.HOLDS) {
            return found;
        }
        double friction = MountingConstants.SMOOTH_FRICTION;
        switch (fastening()) {
            case KeyFastening stated -> {
                if (!axis.reversing()) {
                    key.flatMap(k -> k.lengthFor(required())).ifPresent(length -> addLength(found, length));
                }
            }
            case SetScrewFastening screws -> {}
            case ClampFastening clamp -> friction = clamp.friction();
            case BushingFastening bushing ->
                found.add(new FasteningAlternative(
                        FasteningKind.BUSHING,
                        null,
                        FrictionAndBond.bushingPreloadFor(required(), bushing, diameter()),
                        "the same bushing, tightened more or with more screws, as far as its maker lets it be"));
            case InterferenceFastening fit ->
                new ShaftFit(fit, diameter()).lengthFor(required()).ifPresent(length -> addLength(found, length));
            case BondedFastening bond -> addLength(found, FrictionAndBond.bondLengthFor(required(), bond, diameter()));
        }
        var preload = FrictionAndBond.preloadFor(required(), friction, diameter());
        found.add(new FasteningAlternative(
                FasteningKind.CLAMP,
                null,
                preload,
                "it grips without clearance, so that reversals do not work it loose, and can be taken off"));
        return found;
    }

    private void addLength(List<FasteningAlternative> found, Length length) {
        if (length.si() <= axis.driveUnit().shaftLength().si()) {
            found.add(new FasteningAlternative(
                    kind(), length, null, "the same fastening, long enough; the shaft is no shorter"));
        }
    }

    private Fastening fastening() {
        return axis.mounting().fastening();
    }

    private Length diameter() {
        return axis.driveUnit().shaftDiameter();
    }
}
