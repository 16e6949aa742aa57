package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Temperature;
import java.util.List;

/**
 * Works out the 24 V DC control supply: picks supplies and feed cables at least cost so that every gateway, drive and brake
 * gets enough voltage, and says by how much.
 *
 * <p>Gateways and drive logic take constant power, brakes are constant resistances; the network of loop resistances is
 * solved for released brakes held and for brakes pulling in. Voltages are judged at the lowest output of the supply,
 * currents at its lowest and its highest, conductors hot.
 */
public final class ControlPowerSizing {

    /**
     * Works out the control supply.
     *
     * @throws InvalidDesign if ids are used twice, or feeds come from nowhere, in circles or from another chain
     */
    public ControlPowerResult size(ControlPowerRequest request) {
        RequestFaults.refuse(request);
        Temperature conductor = Conductors.temperature(request.site());
        var cables = new CablePicker(
                request.cables(),
                request.coupled(),
                request.site(),
                request.spec().brakesReleaseTogether());
        List<ControlSupply> supplies = request.supplies().stream()
                .filter(supply -> MainsMatch.hasPhases(request.mains(), supply))
                .toList();
        List<SupplyPlace> places = SupplyPlace.all(request, cables);
        ResultWriter writer = new ResultWriter(request, conductor, cables.longest());
        writer.loads();
        if (supplies.isEmpty()) {
            places.getFirst().networks().forEach(writer::unfed);
        } else {
            new SupplyPicker(request, places, supplies).pick().forEach(writer::supply);
        }
        return writer.result();
    }
}
