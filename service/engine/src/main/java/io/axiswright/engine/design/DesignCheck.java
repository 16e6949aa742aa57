package io.axiswright.engine.design;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Current;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a design must not contradict itself in: ids are unique, references lead somewhere, and each axis is consistent. */
public final class DesignCheck {

    private record Spot(String hostPort, int depth) {}

    private final Design design;
    private final String prefix;
    private final List<Fault> faults = new ArrayList<>();

    private DesignCheck(Design design, String prefix) {
        this.design = design;
        this.prefix = prefix;
    }

    /**
     * All faults; none if the design has a meaning.
     *
     * @param design the design
     * @param pointerPrefix JSON Pointer to it in the document it came in; empty if it is the whole document
     */
    public static List<Fault> faults(Design design, String pointerPrefix) {
        return new DesignCheck(design, pointerPrefix).run();
    }

    private List<Fault> run() {
        requireUnique("/axes", design.axes().stream().map(Axis::id).toList());
        requireUnique(
                "/stopZones", design.stopZones().stream().map(StopZone::id).toList());
        for (int k = 0; k < design.stopZones().size(); k++) {
            faults.addAll(SafeguardCheck.faults(design.stopZones().get(k), prefix + "/stopZones/" + k));
        }
        checkMains(design.mains());
        checkNetwork(design.network());
        checkAxes();
        checkControlPower(design.controlPower());
        checkRoutes(design.installation());
        checkEnclosures(design.installation());
        checkTransformers(design.installation());
        checkWiring(design.wiring());
        checkSpares(design.spareRules());
        checkOperation(design.operation());
        checkMargins(design.marginRules());
        return List.copyOf(faults);
    }

    private void requireUnique(String list, List<String> ids) {
        Map<String, Integer> first = new HashMap<>();
        for (int k = 0; k < ids.size(); k++) {
            Integer before = first.putIfAbsent(ids.get(k), k);
            if (before != null) {
                fault(
                        list + "/" + k + "/id",
                        FaultCode.DUPLICATE_ID,
                        "\"" + ids.get(k) + "\" is the id of " + prefix + list + "/" + before + " already.",
                        "an id no other element of the list has");
            }
        }
    }

    private void checkMains(Mains mains) {
        Current least = mains.minimumFaultCurrent();
        if (least != null && least.si() > mains.prospectiveFaultCurrent().si()) {
            fault(
                    "/mains/minimumFaultCurrent",
                    FaultCode.INCONSISTENT,
                    "The lowest fault current is above the highest.",
                    "at most prospectiveFaultCurrent");
        }
    }

    private void checkNetwork(@Nullable Network network) {
        if (network != null) {
            requireUnique(
                    "/network/host/ports",
                    network.host().ports().stream().map(HostPort::id).toList());
            requireUnique(
                    "/network/places", network.places().stream().map(Place::id).toList());
            checkFixed(network);
            checkKept(network.keep());
            faults.addAll(NetworkCheck.faults(design, network, prefix));
        }
    }

    private void checkFixed(Network network) {
        List<FixedPlace> fixed = network.fixed() == null ? List.of() : network.fixed();
        Set<String> axes = design.axes().stream().map(Axis::id).collect(Collectors.toSet());
        Set<String> places = network.places().stream().map(Place::id).collect(Collectors.toSet());
        Set<String> seen = new HashSet<>();
        for (int k = 0; k < fixed.size(); k++) {
            String pointer = "/network/fixed/" + k;
            String axis = fixed.get(k).axis();
            if (!axes.contains(axis)) {
                dangling(pointer + "/axis", "axis", axis, "axes");
            } else if (!seen.add(axis)) {
                fault(
                        pointer + "/axis",
                        FaultCode.INCONSISTENT,
                        "The place of axis \"" + axis + "\" is fixed already.",
                        "each axis once");
            }
            if (!places.contains(fixed.get(k).place())) {
                dangling(pointer + "/place", "place", fixed.get(k).place(), "network.places");
            }
        }
    }

    /** A kept layout may name what is gone, but no axis twice and no two gateways in one spot. */
    private void checkKept(@Nullable KeptLayout keep) {
        Set<String> axes = new HashSet<>();
        Set<Spot> spots = new HashSet<>();
        List<KeptGateway> gateways = keep == null ? List.of() : keep.gateways();
        for (int k = 0; k < gateways.size(); k++) {
            KeptGateway gateway = gateways.get(k);
            String pointer = "/network/keep/gateways/" + k;
            if (!spots.add(new Spot(gateway.hostPort(), gateway.depth()))) {
                fault(
                        pointer + "/depth",
                        FaultCode.INCONSISTENT,
                        "Another gateway of host port \"" + gateway.hostPort() + "\" has this depth.",
                        "a depth of its own in each trunk");
            }
            for (int j = 0; j < gateway.axes().size(); j++) {
                if (!axes.add(gateway.axes().get(j))) {
                    fault(
                            pointer + "/axes/" + j,
                            FaultCode.INCONSISTENT,
                            "Axis \"" + gateway.axes().get(j) + "\" hangs on a gateway already.",
                            "each axis once");
                }
            }
        }
    }

    private void requireKnown(String pointer, String kind, List<String> ids, Set<String> known, String list) {
        for (int k = 0; k < ids.size(); k++) {
            if (!known.contains(ids.get(k))) {
                dangling(pointer + "/" + k, kind, ids.get(k), list);
            }
        }
    }

    private void dangling(String pointer, String kind, String id, String list) {
        fault(
                pointer,
                FaultCode.DANGLING_REFERENCE,
                "No " + kind + " has the id \"" + id + "\".",
                "the id of an element of " + list);
    }

    private void checkAxes() {
        Set<String> zones = design.stopZones().stream().map(StopZone::id).collect(Collectors.toSet());
        for (int k = 0; k < design.axes().size(); k++) {
            Axis axis = design.axes().get(k);
            String pointer = "/axes/" + k;
            if (axis.stopZone() != null && !zones.contains(axis.stopZone())) {
                dangling(pointer + "/stopZone", "stop zone", axis.stopZone(), "stopZones");
            }
            faults.addAll(AxisCheck.faults(axis, prefix + pointer));
        }
    }

    private void checkEnclosures(@Nullable Installation installation) {
        List<Enclosure> enclosures = installation == null ? List.of() : installation.panels();
        Network network = design.network();
        Set<String> places = network == null
                ? Set.of()
                : network.places().stream().map(Place::id).collect(Collectors.toSet());
        Set<String> axes = design.axes().stream().map(Axis::id).collect(Collectors.toSet());
        Set<String> taken = new HashSet<>();
        for (int k = 0; k < enclosures.size(); k++) {
            Enclosure enclosure = enclosures.get(k);
            String pointer = "/installation/enclosures/" + k;
            if (!places.contains(enclosure.place())) {
                dangling(pointer + "/place", "place of the network", enclosure.place(), "network.places");
            } else if (!taken.add(enclosure.place())) {
                fault(
                        pointer + "/place",
                        FaultCode.INCONSISTENT,
                        "Another enclosure stands at place \"" + enclosure.place() + "\".",
                        "each place once");
            }
            for (int j = 0; j < enclosure.axes().size(); j++) {
                if (!axes.contains(enclosure.axes().get(j))) {
                    dangling(pointer + "/axes/" + j, "axis", enclosure.axes().get(j), "axes");
                }
            }
        }
    }

    private void checkRoutes(@Nullable Installation installation) {
        List<CableRoute> routes = installation == null ? List.of() : installation.routes();
        requireUnique(
                "/installation/cableRoutes", routes.stream().map(CableRoute::id).toList());
        Set<String> axes = design.axes().stream().map(Axis::id).collect(Collectors.toSet());
        Network network = design.network();
        Set<String> places = network == null
                ? Set.of()
                : network.places().stream().map(Place::id).collect(Collectors.toSet());
        for (int k = 0; k < routes.size(); k++) {
            String pointer = "/installation/cableRoutes/" + k;
            List<String> along = routes.get(k).axes();
            for (int j = 0; j < along.size(); j++) {
                if (!axes.contains(along.get(j))) {
                    dangling(pointer + "/axes/" + j, "axis", along.get(j), "axes");
                } else if (along.indexOf(along.get(j)) < j) {
                    fault(
                            pointer + "/axes/" + j,
                            FaultCode.INCONSISTENT,
                            "Axis \"" + along.get(j) + "\" is on this route already.",
                            "each axis once");
                }
            }
            requireKnown(pointer + "/axisAssemblies", "axis", routes.get(k).axisAssemblyList(), axes, "axes");
            requireKnown(
                    pointer + "/placeAssemblies", "place", routes.get(k).placeAssemblyList(), places, "network.places");
            ClampingRange gland = routes.get(k).gland();
            if (gland != null && gland.minimum().si() > gland.maximum().si()) {
                fault(
                        pointer + "/gland/minimum",
                        FaultCode.INCONSISTENT,
                        "The smallest diameter of the gland is above the largest.",
                        "at most maximum");
            }
        }
    }

    private void checkTransformers(@Nullable Installation installation) {
        Transformers transformers = installation == null ? null : installation.transformers();
        if (installation == null || transformers == null) {
            return;
        }
        Set<String> axes = design.axes().stream().map(Axis::id).collect(Collectors.toSet());
        for (int k = 0; k < transformers.axes().size(); k++) {
            if (!axes.contains(transformers.axes().get(k))) {
                dangling(
                        "/installation/transformers/axes/" + k,
                        "axis",
                        transformers.axes().get(k),
                        "axes");
            }
        }
        String place = transformers.place();
        Network network = design.network();
        if (place != null && (network == null || network.places().stream().noneMatch(p -> p.id().equals(place)))) {
            dangling("/installation/transformers/place", "place of the network", place, "network.places");
        }
        if (transformers.earthing() == SystemEarthing.TT) {
            fault(
                    "/installation/transformers/earthing",
                    FaultCode.INCONSISTENT,
                    "A secondary within the machine has no earth electrode of its own.",
                    "TN or IT");
        }
        Double impedance = installation.transformerImpedance();
        Double resistive = transformers.resistiveVoltage();
        if (impedance != null && resistive != null && resistive > impedance) {
            fault(
                    "/installation/transformers/resistiveVoltage",
                    FaultCode.INCONSISTENT,
                    "The resistive part of the short-circuit voltage is above the whole.",
                    "at most transformerImpedance");
        }
    }

    private void checkControlPower(@Nullable ControlPower controlPower) {
        if (controlPower == null) {
            return;
        }
        Network network = design.network();
        if (network == null) {
            fault(
                    "/network",
                    FaultCode.MISSING,
                    "The control power stands at a place of the network, but there is no network.",
                    "the network with its places, or a design without controlPower");
        } else if (network.places().stream().noneMatch(place -> place.id().equals(controlPower.place()))) {
            dangling("/controlPower/place", "place of the network", controlPower.place(), "network.places");
        }
        checkFurtherPlaces(network, controlPower);
        checkFieldDevices(controlPower.fieldDeviceList());
    }

    private void checkFurtherPlaces(@Nullable Network network, ControlPower controlPower) {
        List<String> further = controlPower.furtherPlaceList();
        Set<String> known = network == null
                ? Set.of()
                : network.places().stream().map(Place::id).collect(Collectors.toSet());
        Set<String> seen = new HashSet<>(Set.of(controlPower.place()));
        for (int k = 0; k < further.size(); k++) {
            String pointer = "/controlPower/furtherPlaces/" + k;
            if (network != null && !known.contains(further.get(k))) {
                dangling(pointer, "place of the network", further.get(k), "network.places");
            } else if (!seen.add(further.get(k))) {
                fault(pointer, FaultCode.DUPLICATE_ID, further.get(k) + " is named twice", "each place once");
            }
        }
    }

    private void checkFieldDevices(List<FieldDevice> devices) {
        requireUnique(
                "/controlPower/fieldDevices",
                devices.stream().map(FieldDevice::id).toList());
        Set<String> axes = design.axes().stream().map(Axis::id).collect(Collectors.toSet());
        for (int k = 0; k < devices.size(); k++) {
            if (!axes.contains(devices.get(k).axis())) {
                dangling(
                        "/controlPower/fieldDevices/" + k + "/axis",
                        "axis",
                        devices.get(k).axis(),
                        "axes");
            }
        }
    }

    private void checkWiring(@Nullable Wiring wiring) {
        if (wiring == null) {
            return;
        }
        Set<String> places = design.network() == null
                ? Set.of()
                : design.network().places().stream().map(Place::id).collect(Collectors.toSet());
        for (int k = 0; k < wiring.openPlaceList().size(); k++) {
            if (!places.contains(wiring.openPlaceList().get(k))) {
                dangling(
                        "/wiring/openPlaces/" + k,
                        "place of the network",
                        wiring.openPlaceList().get(k),
                        "network.places");
            }
        }
        if (wiring.stopPlace() != null && !places.contains(wiring.stopPlace())) {
            dangling("/wiring/stopPlace", "place of the network", wiring.stopPlace(), "network.places");
        }
    }

    private void checkSpares(List<SpareRule> rules) {
        Set<ItemKind> seen = new HashSet<>();
        for (int k = 0; k < rules.size(); k++) {
            if (!seen.add(rules.get(k).kind())) {
                fault(
                        "/spares/" + k + "/kind",
                        FaultCode.INCONSISTENT,
                        "There is a rule for spares of " + rules.get(k).kind() + " already.",
                        "each kind once");
            }
        }
    }

    private void checkOperation(@Nullable Operation operation) {
        if (operation != null && operation.life() != null && operation.energyPrice() == null) {
            fault(
                    "/operation/energyPrice",
                    FaultCode.MISSING,
                    "Cables cannot be weighed over a life without the price of the energy they lose.",
                    "the price of one kilowatt-hour, or no life");
        }
    }

    private void checkMargins(List<MarginRule> rules) {
        for (int k = 0; k < rules.size(); k++) {
            MarginRule rule = rules.get(k);
            if (rules.subList(0, k).stream().anyMatch(r -> r.kind() == rule.kind() && r.lines() == rule.lines())) {
                fault(
                        "/margins/" + k,
                        FaultCode.INCONSISTENT,
                        "There is a margin for the same items and lines already.",
                        "each kind and lines together once");
            }
        }
    }

    private void fault(String pointer, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(prefix + pointer, code, detail, accepted));
    }
}
