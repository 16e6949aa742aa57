package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds everything in a request that has no meaning. */
final class RequestCheck {

    private final BrakingRequest request;
    private final List<Fault> faults = new ArrayList<>();

    private RequestCheck(BrakingRequest request) {
        this.request = request;
    }

    /**
     * Lets a request with a meaning pass.
     *
     * @throws InvalidDesign with every fault, pointers from the root of the request
     */
    static void pass(BrakingRequest request) {
        var check = new RequestCheck(request);
        check.axes();
        check.unique("/zones/", request.zones().stream().map(StopZone::id).toList());
        check.units();
        if (!check.faults.isEmpty()) {
            throw new InvalidDesign(check.faults);
        }
    }

    private void axes() {
        unique("/axes/", request.axes().stream().map(BrakingAxis::id).toList());
        Set<String> zones = request.zones().stream().map(StopZone::id).collect(Collectors.toSet());
        for (int k = 0; k < request.axes().size(); k++) {
            String zone = request.axes().get(k).stopZone();
            if (zone != null && !zones.contains(zone)) {
                faults.add(new Fault(
                        "/axes/" + k + "/stopZone",
                        FaultCode.DANGLING_REFERENCE,
                        "There is no stop zone " + zone + ".",
                        "the id of a stop zone, one of "
                                + zones.stream().sorted().toList()));
            }
        }
    }

    private void units() {
        List<BrakingUnit> units = request.brakingUnits();
        unique("/brakingUnits/", units.stream().map(BrakingUnit::id).toList());
        for (int k = 0; k < units.size(); k++) {
            BrakingUnit unit = units.get(k);
            if (unit.chopperOff().si() >= unit.chopperOn().si()) {
                faults.add(new Fault(
                        "/brakingUnits/" + k + "/chopperOff",
                        FaultCode.INCONSISTENT,
                        "The chopper of " + unit.id() + " would switch off at "
                                + unit.chopperOff().si() + " V, not below the "
                                + unit.chopperOn().si() + " V at which it switches on.",
                        "a voltage below chopperOn"));
            }
        }
    }

    private void unique(String list, List<String> ids) {
        Set<String> seen = new HashSet<>();
        for (int k = 0; k < ids.size(); k++) {
            if (!seen.add(ids.get(k))) {
                faults.add(new Fault(
                        list + k + "/id",
                        FaultCode.DUPLICATE_ID,
                        "The id " + ids.get(k) + " is used twice.",
                        "an id used once"));
            }
        }
    }
}
