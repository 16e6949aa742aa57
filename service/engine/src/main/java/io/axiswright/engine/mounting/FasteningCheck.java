package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.FasteningKind;
import io.axiswright.engine.design.BondedFastening;
import io.axiswright.engine.design.ClampFastening;
import io.axiswright.engine.design.Fastening;
import io.axiswright.engine.design.KeyFastening;
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
            case ClampFastening clamp -> Optional.of(FrictionAndBond.clamp(clamp, diameter()));
            case BondedFastening bond -> Optional.of(FrictionAndBond.bond(bond, diameter()));
        };
    }

    /** Length of shaft the fastening takes up; a clamp does not state it. */
    Optional<Length> engagedLength() {
        return switch (fastening()) {
            case KeyFastening k -> Optional.of(k.engagedLength());
            case ClampFastening c -> Optional.empty();
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
        // a key alone has no friction joint that would keep it from moving through its clearance
        return axis.reversing() && kind() == FasteningKind.KEY
                ? FasteningVerdict.UNFIT_FOR_REVERSAL
                : FasteningVerdict.HOLDS;
    }

    /** What would hold instead: the same fastening made longer or tighter, and a clamp hub of plain steel. */
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
            case ClampFastening clamp -> friction = clamp.friction();
            case BondedFastening bond -> addLength(found, FrictionAndBond.bondLengthFor(required(), bond, diameter()));
        }
        var preload = FrictionAndBond.preloadFor(required(), friction, diameter());
        found.add(new FasteningAlternative(FasteningKind.CLAMP, null, preload));
        return found;
    }

    private void addLength(List<FasteningAlternative> found, Length length) {
        if (length.si() <= axis.driveUnit().shaftLength().si()) {
            found.add(new FasteningAlternative(kind(), length, null));
        }
    }

    private Fastening fastening() {
        return axis.mounting().fastening();
    }

    private Length diameter() {
        return axis.driveUnit().shaftDiameter();
    }
}
