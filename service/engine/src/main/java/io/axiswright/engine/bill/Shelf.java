package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Accessory;
import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.catalogue.BufferUnit;
import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableGland;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.FasteningPart;
import io.axiswright.engine.catalogue.FootKit;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.catalogue.SupplyDisconnector;
import io.axiswright.engine.catalogue.VentilationKit;

/** The lists of a catalogue in their order, by the name they have on the wire. */
enum Shelf {
    DRIVE_UNITS("driveUnits"),
    HOLDING_BRAKES("holdingBrakes"),
    GATEWAYS("gateways"),
    CONTROL_SUPPLIES("controlSupplies"),
    CABLE_ASSEMBLIES("cableAssemblies"),
    BULK_CABLES("bulkCables"),
    PROTECTIVE_DEVICES("protectiveDevices"),
    BRAKING_UNITS("brakingUnits"),
    VENTILATION_KITS("ventilationKits"),
    FOOT_KITS("footKits"),
    FASTENING_PARTS("fasteningParts"),
    ACCESSORIES("accessories"),
    GEAR_UNITS("gearUnits"),
    OUTPUT_PROTECTIONS("outputProtections"),
    BUFFER_UNITS("bufferUnits"),
    CABLE_GLANDS("cableGlands"),
    DISCONNECTORS("disconnectors");

    private final String member;

    Shelf(String member) {
        this.member = member;
    }

    /** JSON Pointer, in the catalogue, to the item at that index of the list. */
    String place(int index) {
        return "/" + member + "/" + index;
    }

    /** The list an item stands in. */
    static Shelf of(Item item) {
        return switch (item) {
            case DriveUnit _ -> DRIVE_UNITS;
            case HoldingBrake _ -> HOLDING_BRAKES;
            case GatewayType _ -> GATEWAYS;
            case ControlSupply _ -> CONTROL_SUPPLIES;
            case CableAssembly _ -> CABLE_ASSEMBLIES;
            case BulkCable _ -> BULK_CABLES;
            case ProtectiveDevice _ -> PROTECTIVE_DEVICES;
            case BrakingUnit _ -> BRAKING_UNITS;
            case VentilationKit _ -> VENTILATION_KITS;
            case FootKit _ -> FOOT_KITS;
            case FasteningPart _ -> FASTENING_PARTS;
            case Accessory _ -> ACCESSORIES;
            case GearUnit _ -> GEAR_UNITS;
            case OutputProtection _ -> OUTPUT_PROTECTIONS;
            case BufferUnit _ -> BUFFER_UNITS;
            case CableGland _ -> CABLE_GLANDS;
            case SupplyDisconnector _ -> DISCONNECTORS;
        };
    }
}
