package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The remarks on one DC bus. */
final class GroupFindings {

    private static final String DERIVED = "derived: energy balance of the DC bus, E = ½·C·V²";

    private static final String THIN_AIR = "common practice, no source; 1000 m as in IEC 60034-1 for motors";

    /** Ratings of what air cools hold up to here. */
    private static final Length RATED_ALTITUDE = new Length(1000);

    private final GroupStudy study;
    private final BrakingRequest request;
    private final List<Finding> findings = new ArrayList<>();

    GroupFindings(GroupStudy study, BrakingRequest request) {
        this.study = study;
        this.request = request;
    }

    List<Finding> all() {
        Bus bus = study.bus();
        Voltage floor = new Voltage(bus.voltage(bus.floorEnergy()));
        Voltage trip = new Voltage(bus.voltage(bus.tripEnergy()));
        if (bus.floorEnergy() >= bus.tripEnergy()) {
            add(FindingCode.BRAKING_LINE_ABOVE_TRIP, "derived: rectified voltage √2·V at high line", floor, trip);
        } else if (study.verdict() == BrakingVerdict.NONE_FITS) {
            add(
                    study.run().basis() == CycleBasis.BOUND
                            ? FindingCode.BRAKING_BUS_UNPROVEN
                            : FindingCode.BRAKING_BUS_OVERVOLTAGE,
                    DERIVED,
                    new Voltage(bus.voltage(study.run().peakEnergy())),
                    trip);
        }
        BrakingUnit unit = study.unit();
        if (unit != null) {
            unit(unit, trip);
        }
        switch (study.run().basis()) {
            case BOUND -> add(FindingCode.BRAKING_CYCLES_UNRELATED, DERIVED, null, null);
            case UNSETTLED -> add(FindingCode.BRAKING_CYCLE_UNSETTLED, DERIVED, null, null);
            case PERIODIC, COMMON_MULTIPLE -> {}
        }
        if (study.group().axes().size() > 1) {
            add(FindingCode.BRAKING_BUS_SHARED, "common practice, no source", null, null);
        }
        add(FindingCode.BRAKING_BUS_STORED_ENERGY, "IEC 60204-1:2016 6.2.4", stored(), null);
        return findings;
    }

    private void unit(BrakingUnit unit, Voltage trip) {
        int count = study.count();
        ResistorHeat heat = ResistorHeat.of(
                unit, count, study.run(), study.group().stopsPerHour(request.zones()), request.ambient());
        add(FindingCode.BRAKING_RESISTOR_HOT, "IEC 60204-1:2016 16.2.2", heat.hottest(), unit.resistorLimit());
        Length altitude = request.altitude();
        if (altitude != null && altitude.si() > RATED_ALTITUDE.si()) {
            add(FindingCode.BRAKING_RESISTOR_ALTITUDE, THIN_AIR, altitude, RATED_ALTITUDE);
        }
        GroupRun dead = study.withOneDead();
        if (!dead.fits(study.bus())) {
            Voltage reached = new Voltage(study.bus().voltage(dead.peakEnergy()));
            add(FindingCode.BRAKING_UNIT_FAILURE, DERIVED, reached, trip);
        }
        if (count > 1) {
            add(FindingCode.BRAKING_UNITS_PARALLEL, "common practice, no source", null, null);
        }
        if (unit.maxResistorCable() != null) {
            double lowest = unit.resistance().si() * (1 - unit.resistanceTolerance());
            Current current = new Current(Math.sqrt(heat.meanPower() / lowest));
            add(FindingCode.BRAKING_RESISTOR_CABLE, "derived: √(P/R)", current, unit.maxResistorCable());
        }
        BusPower lowering = study.loads().lowering();
        if (lowering != null && lowering.peak() > heat.allowedPower() * count) {
            Power lasting = new Power(heat.allowedPower() * count);
            add(FindingCode.BRAKING_LOWERING_LONG, DERIVED, new Power(lowering.peak()), lasting);
        }
    }

    private Energy stored() {
        double most = Math.min(study.run().peakEnergy(), study.bus().tripEnergy());
        return new Energy(Math.max(most, study.bus().floorEnergy()));
    }

    private void add(FindingCode code, String clause, @Nullable Quantity value, @Nullable Quantity limit) {
        findings.add(code.at(study.group().id(), study.group().pointer(), clause, value, limit));
    }
}
