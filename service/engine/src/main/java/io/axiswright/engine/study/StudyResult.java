package io.axiswright.engine.study;

import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.braking.BrakingResult;
import io.axiswright.engine.conductor.ConductorResult;
import io.axiswright.engine.containment.ContainmentResult;
import io.axiswright.engine.controlpower.ControlPowerResult;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.duty.DutyResult;
import io.axiswright.engine.enclosure.EnclosureResult;
import io.axiswright.engine.energy.EnergyResult;
import io.axiswright.engine.fault.FaultResult;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.harmonic.HarmonicResult;
import io.axiswright.engine.mounting.MountingResult;
import io.axiswright.engine.stopping.StoppingResult;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.topology.TopologyResult;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The whole system.
 *
 * @param engineVersion version of the engine that worked it out
 * @param codeBasis the electrical code it follows
 * @param buildable whether there is no violation
 * @param findings the findings of all disciplines, violations first, then cautions, then notes
 * @param duty what each axis asks of its drive unit, and which it gets
 * @param topology the control network
 * @param controlPower the 24 V control supply
 * @param braking where returned energy goes
 * @param stopping how every stop zone comes to rest, and how far safeguards must be
 * @param supply branch circuits, protective devices and feeder
 * @param conductors the conductors of every circuit
 * @param containment the stated routes of the power cables: fill, bends and glands
 * @param enclosures the stated enclosures: losses, and the temperature they give
 * @param energy what the machine takes in a year, and what that costs; absent if the design does not say how much it runs
 * @param harmonics harmonic currents and their distortion at the point of common coupling; absent if the design names none
 * @param faults short-circuit currents, and what devices, conductors and loads make of them
 * @param mounting fastening and fit of the drive units
 * @param billOfMaterials everything to be bought
 * @param otherMarket the same machine in the other market the request names, and what is different there; absent if it names
 *     none
 */
public record StudyResult(
        String engineVersion,
        CodeBasis codeBasis,
        boolean buildable,
        List<Finding> findings,
        DutyResult duty,
        TopologyResult topology,
        ControlPowerResult controlPower,
        BrakingResult braking,
        StoppingResult stopping,
        SupplyResult supply,
        ConductorResult conductors,
        ContainmentResult containment,
        EnclosureResult enclosures,
        @Nullable EnergyResult energy,
        @Nullable HarmonicResult harmonics,
        FaultResult faults,
        MountingResult mounting,
        BillResult billOfMaterials,
        @Nullable MarketComparison otherMarket) {

    /** Keeps the findings from being changed. */
    public StudyResult {
        findings = List.copyOf(findings);
    }

    /** The same study, beside that of another market. */
    StudyResult beside(MarketComparison other) {
        return new StudyResult(
                engineVersion,
                codeBasis,
                buildable,
                findings,
                duty,
                topology,
                controlPower,
                braking,
                stopping,
                supply,
                conductors,
                containment,
                enclosures,
                energy,
                harmonics,
                faults,
                mounting,
                billOfMaterials,
                other);
    }
}
