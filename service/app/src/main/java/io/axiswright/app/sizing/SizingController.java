package io.axiswright.app.sizing;

import io.axiswright.app.report.BillFormats;
import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.braking.BrakingResult;
import io.axiswright.engine.conductor.ConductorRequest;
import io.axiswright.engine.conductor.ConductorResult;
import io.axiswright.engine.conductor.ConductorSizing;
import io.axiswright.engine.controlpower.ControlPowerResult;
import io.axiswright.engine.duty.DutyResult;
import io.axiswright.engine.fault.FaultResult;
import io.axiswright.engine.mounting.MountingResult;
import io.axiswright.engine.stopping.StoppingResult;
import io.axiswright.engine.study.OtherMarket;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.topology.SearchGate;
import io.axiswright.engine.topology.TopologyResult;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Sizes a design, or circuits, and keeps nothing. */
@RestController
@RequestMapping("/v1/sizing")
class SizingController {

    private final StudyRequests requests;
    private final SystemStudy study;
    private final ConductorSizing conductorSizing = new ConductorSizing();

    SizingController(StudyRequests requests, SearchGate gate) {
        this.requests = requests;
        this.study = SystemStudy.proving(gate);
    }

    @PostMapping("/duty")
    DutyResult sizeDuty(@RequestBody SizingRequest request) {
        return study.duty(requests.of(request));
    }

    @PostMapping("/topology")
    TopologyResult sizeTopology(@RequestBody SizingRequest request) {
        return study.topology(requests.of(request));
    }

    @PostMapping("/control-power")
    ControlPowerResult sizeControlPower(@RequestBody SizingRequest request) {
        return study.controlPower(requests.of(request));
    }

    @PostMapping("/braking")
    BrakingResult sizeBraking(@RequestBody SizingRequest request) {
        return study.braking(requests.of(request));
    }

    @PostMapping("/stopping")
    StoppingResult sizeStopping(@RequestBody SizingRequest request) {
        return study.stopping(requests.of(request));
    }

    @PostMapping("/supply")
    SupplyResult sizeSupply(@RequestBody SizingRequest request) {
        return study.supply(requests.of(request));
    }

    @PostMapping("/conductors")
    ConductorResult sizeConductors(@RequestBody ConductorRequest request) {
        return conductorSizing.size(request);
    }

    @PostMapping("/faults")
    FaultResult sizeFaults(@RequestBody SizingRequest request) {
        return study.faults(requests.of(request));
    }

    @PostMapping("/mounting")
    MountingResult sizeMounting(@RequestBody SizingRequest request) {
        return study.mounting(requests.of(request));
    }

    /**
     * The bill of materials, in the form that Accept asks for. As CSV it is one table under one header; its column {@code section} says what a
     * row is: {@code required}, {@code optional}, {@code customerSupplied}, {@code noCharge} or {@code spares} for a line of that section, and
     * after all lines {@code finding} for what has to be known of the bill. A finding has no item, quantity and price; its text is the
     * description, and {@code severity}, {@code code}, {@code subject}, {@code remedy} and {@code clause} are its own. A bill with a row of
     * severity VIOLATION is of a machine that cannot be built as it stands. Columns may be added at the end.
     */
    @PostMapping(
            path = "/bill-of-materials",
            produces = {MediaType.APPLICATION_JSON_VALUE, BillFormats.CSV, BillFormats.XLSX, BillFormats.XML})
    BillResult sizeBillOfMaterials(@RequestBody SizingRequest request) {
        return study.billOfMaterials(requests.of(request));
    }

    @PostMapping("/system")
    StudyResult sizeSystem(@RequestBody SizingRequest request) {
        OtherMarket other = request.otherMarket();
        return other == null ? study.system(requests.of(request)) : study.system(requests.of(request), other);
    }
}
