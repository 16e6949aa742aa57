package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Money;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Anything the catalogue sells. */
public sealed interface Item
        permits DriveUnit,
                HoldingBrake,
                GatewayType,
                ControlSupply,
                CableAssembly,
                BulkCable,
                ProtectiveDevice,
                BrakingUnit,
                VentilationKit,
                GearUnit,
                FootKit,
                FasteningPart,
                OutputProtection,
                BufferUnit,
                CableGland,
                SupplyDisconnector,
                Accessory {

    /** Unique in the catalogue. */
    String id();

    /** What it is. */
    String description();

    /** Price of one unit; absent: on request. */
    @Nullable
    Money price();

    /** What must, may or need not be bought beside it. */
    List<Need> needs();
}
