package io.axiswright.engine.energy;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;

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
 * @param cables what the cables of the circuits cost over the life of the machine; absent if the operation has no life, and
 *     where energy and catalogue are priced in different currencies. Circuits whose selected cable has no price are left out
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
        @Nullable List<CableEconomy> cables,
        List<Finding> findings,
        List<Derivation> derivations) {}
