package io.axiswright.engine.energy;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Time;
import java.util.List;

/**
 * The energy of a machine in a year. The shares add up to the total; so do axes, resistors of the buses, control supplies and
 * conductors.
 *
 * @param timePerYear how long it runs in a year
 * @param total what it takes at its supply terminals; losses of transformers ahead of loads are not part of it
 * @param shares what becomes of that
 * @param axes every axis that has a drive unit
 * @param buses every DC bus
 * @param controlSupplies every control supply
 * @param conductors every circuit that has a power cable
 * @param findings remarks
 * @param derivations how the total came about
 */
public record EnergyResult(
        Time timePerYear,
        YearlyUse total,
        List<EnergyShare> shares,
        List<AxisEnergy> axes,
        List<BusEnergy> buses,
        List<ControlSupplyEnergy> controlSupplies,
        List<ConductorEnergy> conductors,
        List<Finding> findings,
        List<Derivation> derivations) {}
