package io.axiswright.engine.design;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a stop zone's safeguards must state for the edition of the standard they follow. */
public final class SafeguardCheck {

    /** The coarsest light curtain the edition of 2010 knows, m. */
    private static final double COARSEST = 0.07;

    private final List<Fault> faults = new ArrayList<>();

    private SafeguardCheck() {}

    /**
     * The faults of a zone's safeguards.
     *
     * @param pointer JSON Pointer to the zone
     */
    public static List<Fault> faults(StopZone zone, String pointer) {
        var check = new SafeguardCheck();
        Set<String> ids = new HashSet<>();
        List<Safeguard> safeguards = zone.safeguardList();
        for (int k = 0; k < safeguards.size(); k++) {
            String at = pointer + "/safeguards/" + k;
            Safeguard safeguard = safeguards.get(k);
            if (!ids.add(safeguard.id())) {
                check.fault(
                        at + "/id",
                        FaultCode.DUPLICATE_ID,
                        "\"" + safeguard.id() + "\" is the id of another safeguard of the zone already.",
                        "an id no other safeguard of the zone has");
            }
            switch (safeguard.standard()) {
                case ISO_13855_2010 -> check.edition2010(safeguard, at);
                case ISO_13855_2024 -> check.edition2024(safeguard, at);
            }
        }
        return check.faults;
    }

    private void edition2010(Safeguard safeguard, String at) {
        absent(safeguard.reachingDistance(), at + "/reachingDistance");
        absent(safeguard.supplement(), at + "/supplement");
        if (safeguard.detection() instanceof LightCurtain curtain
                && curtain.detectionCapability().si() > COARSEST) {
            fault(
                    at + "/detection/detectionCapability",
                    FaultCode.OUT_OF_RANGE,
                    "ISO 13855:2010 has no distance for a light curtain as coarse as that.",
                    "70 mm or less, or a BEAM_GRID");
        }
    }

    private void edition2024(Safeguard safeguard, String at) {
        boolean reachKnown = switch (safeguard.detection()) {
            case ParallelField _, TwoHandControl _, InterlockedGuard _ -> true;
            case LightCurtain _, BeamGrid _, PressureMat _ -> false;
        };
        boolean speedKnown = switch (safeguard.detection()) {
            case ParallelField _, LightCurtain _, InterlockedGuard _ -> true;
            case TwoHandControl _, BeamGrid _, PressureMat _ -> false;
        };
        if (!reachKnown) {
            present(safeguard.reachingDistance(), at + "/reachingDistance", "reaching distance D_DS");
        }
        if (!speedKnown) {
            present(safeguard.approachSpeed(), at + "/approachSpeed", "approach speed K");
        }
    }

    private void absent(@Nullable Object member, String at) {
        if (member != null) {
            fault(
                    at,
                    FaultCode.INCONSISTENT,
                    "ISO 13855:2010 knows no such distance.",
                    "nothing, or the standard ISO_13855_2024");
        }
    }

    private void present(@Nullable Object member, String at, String what) {
        if (member == null) {
            fault(
                    at,
                    FaultCode.MISSING,
                    "The " + what + " of ISO 13855:2024 is not known here for this kind of detection.",
                    "the value the standard gives, or the standard ISO_13855_2010");
        }
    }

    private void fault(String pointer, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(pointer, code, detail, accepted));
    }
}
