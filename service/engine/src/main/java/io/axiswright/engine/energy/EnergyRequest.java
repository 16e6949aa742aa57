package io.axiswright.engine.energy;

import io.axiswright.engine.design.Operation;
import io.axiswright.engine.quantity.Power;
import java.util.List;

/**
 * The mean powers of a machine over its cycles.
 *
 * @param operation how much it runs, and what its energy costs
 * @param axes its axes
 * @param buses its DC buses
 * @param controlSupplies its control supplies
 * @param transformers what its transformers lose
 * @param conductors the conductors of its circuits
 * @param cables the cables its circuits could have; weighed only where the operation has a life
 */
public record EnergyRequest(
        Operation operation,
        List<AxisPower> axes,
        List<BusPower> buses,
        List<ControlSupplyPower> controlSupplies,
        Power transformers,
        List<ConductorLoss> conductors,
        List<CableOptions> cables) {}
