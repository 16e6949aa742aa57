package io.axiswright.engine.design;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What growth, separations and cable ways of a network must not contradict themselves in. */
final class NetworkCheck {

    private final Network network;
    private final String prefix;
    private final Set<String> axes;
    private final Set<String> zones;
    private final Set<String> places;
    private final List<Fault> faults = new ArrayList<>();

    private NetworkCheck(Design design, Network network, String prefix) {
        this.network = network;
        this.prefix = prefix + "/network";
        this.axes = design.axes().stream().map(Axis::id).collect(Collectors.toSet());
        this.zones = design.stopZones().stream().map(StopZone::id).collect(Collectors.toSet());
        this.places = network.places().stream().map(Place::id).collect(Collectors.toSet());
    }

    /** The faults of a network; the prefix is the JSON Pointer to its design. */
    static List<Fault> faults(Design design, Network network, String prefix) {
        if (network.reserved() == null && network.separations() == null && network.ways() == null) {
            return List.of();
        }
        var check = new NetworkCheck(design, network, prefix);
        check.checkReserved();
        check.checkSeparations();
        if (network.ways() != null) {
            check.faults.addAll(WayCheck.faults(design, network, network.ways(), check.prefix + "/ways"));
        }
        return check.faults;
    }

    private void checkReserved() {
        Set<String> seen = new HashSet<>();
        for (int k = 0; k < network.reservedList().size(); k++) {
            ReservedAxis reserved = network.reservedList().get(k);
            String pointer = "/reserved/" + k;
            if (axes.contains(reserved.id()) || !seen.add(reserved.id())) {
                fault(
                        pointer + "/id",
                        FaultCode.DUPLICATE_ID,
                        "\"" + reserved.id() + "\" is the id of another axis already.",
                        "an id no other axis, reserved or not, has");
            }
            known(reserved.place(), places, pointer + "/place", "place", "network.places");
            known(reserved.stopZone(), zones, pointer + "/stopZone", "stop zone", "stopZones");
            if (reserved.position() == null) {
                checkWhereabouts(reserved, pointer);
            }
        }
    }

    private void checkWhereabouts(ReservedAxis reserved, String pointer) {
        if (reserved.place() == null) {
            fault(
                    pointer,
                    FaultCode.MISSING,
                    "Nothing says where the reserved axis \"" + reserved.id() + "\" is to hang.",
                    "a position, a place or both");
        }
        if (reserved.farCorner() != null) {
            fault(
                    pointer + "/farCorner",
                    FaultCode.INCONSISTENT,
                    "A box has two opposite corners, but there is no position.",
                    "a position beside it");
        }
    }

    private void checkSeparations() {
        Set<String> all = new HashSet<>(axes);
        network.reservedList().forEach(reserved -> all.add(reserved.id()));
        Set<String> ids = new HashSet<>();
        for (int k = 0; k < network.separationList().size(); k++) {
            Separation separation = network.separationList().get(k);
            String pointer = "/separations/" + k;
            if (!ids.add(separation.id())) {
                fault(
                        pointer + "/id",
                        FaultCode.DUPLICATE_ID,
                        "\"" + separation.id() + "\" is the id of another separation already.",
                        "an id no other separation has");
            }
            Set<String> seen = new HashSet<>();
            for (int j = 0; j < separation.axes().size(); j++) {
                String axis = separation.axes().get(j);
                known(axis, all, pointer + "/axes/" + j, "axis", "axes or network.reserved");
                if (!seen.add(axis)) {
                    fault(
                            pointer + "/axes/" + j,
                            FaultCode.INCONSISTENT,
                            "Axis \"" + axis + "\" is in this separation already.",
                            "each axis once");
                }
            }
        }
    }

    private void known(@Nullable String id, Set<String> all, String pointer, String kind, String list) {
        if (id != null && !all.contains(id)) {
            fault(
                    pointer,
                    FaultCode.DANGLING_REFERENCE,
                    "No " + kind + " has the id \"" + id + "\".",
                    "the id of an element of " + list);
        }
    }

    private void fault(String pointer, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(prefix + pointer, code, detail, accepted));
    }
}
