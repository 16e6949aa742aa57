package io.axiswright.engine.supply;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/** Loads that have no meaning: two of one id, or without current or voltage. */
final class LoadCheck {

    private LoadCheck() {}

    /**
     * Refuses such loads, all of them at once.
     *
     * @throws InvalidDesign if there are any
     */
    static void check(List<SupplyLoad> loads) {
        var faults = new ArrayList<Fault>();
        var ids = new HashSet<String>();
        for (int k = 0; k < loads.size(); k++) {
            var load = loads.get(k);
            if (!ids.add(load.id())) {
                faults.add(new Fault(
                        load.pointer(),
                        FaultCode.DUPLICATE_ID,
                        "there is another load " + load.id(),
                        "an id no other load has"));
            }
            if (load.rated() <= 0) {
                faults.add(new Fault(
                        load.pointer(),
                        FaultCode.OUT_OF_RANGE,
                        load.id() + " draws " + load.rated() + " A",
                        "a current above zero"));
            }
            if (load.ratedVoltage().si() <= 0) {
                faults.add(new Fault(
                        load.pointer(),
                        FaultCode.OUT_OF_RANGE,
                        load.id() + " is made for " + load.ratedVoltage().si() + " V",
                        "a voltage above zero"));
            }
        }
        if (!faults.isEmpty()) {
            throw new InvalidDesign(faults);
        }
    }
}
