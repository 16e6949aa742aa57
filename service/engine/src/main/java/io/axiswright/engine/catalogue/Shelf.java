package io.axiswright.engine.catalogue;

import io.axiswright.engine.design.ItemKind;

/** The lists of a catalogue in their order, by the name they have on the wire. */
public enum Shelf {
    DRIVE_UNITS(ItemKind.DRIVE_UNIT, "driveUnits"),
    HOLDING_BRAKES(ItemKind.HOLDING_BRAKE, "holdingBrakes"),
    GATEWAYS(ItemKind.GATEWAY, "gateways"),
    CONTROL_SUPPLIES(ItemKind.CONTROL_SUPPLY, "controlSupplies"),
    CABLE_ASSEMBLIES(ItemKind.CABLE_ASSEMBLY, "cableAssemblies"),
    BULK_CABLES(ItemKind.BULK_CABLE, "bulkCables"),
    PROTECTIVE_DEVICES(ItemKind.PROTECTIVE_DEVICE, "protectiveDevices"),
    BRAKING_UNITS(ItemKind.BRAKING_UNIT, "brakingUnits"),
    VENTILATION_KITS(ItemKind.VENTILATION_KIT, "ventilationKits"),
    FOOT_KITS(ItemKind.FOOT_KIT, "footKits"),
    FASTENING_PARTS(ItemKind.FASTENING_PART, "fasteningParts"),
    ACCESSORIES(ItemKind.ACCESSORY, "accessories"),
    GEAR_UNITS(ItemKind.GEAR_UNIT, "gearUnits"),
    OUTPUT_PROTECTIONS(ItemKind.OUTPUT_PROTECTION, "outputProtections"),
    BUFFER_UNITS(ItemKind.BUFFER_UNIT, "bufferUnits"),
    CABLE_GLANDS(ItemKind.CABLE_GLAND, "cableGlands"),
    DISCONNECTORS(ItemKind.DISCONNECTOR, "disconnectors");

    private final ItemKind kind;
    private final String member;

    Shelf(ItemKind kind, String member) {
        this.kind = kind;
        this.member = member;
    }

    /** What its items are. */
    public ItemKind kind() {
        return kind;
    }

    /** JSON Pointer, in the catalogue, to the item at that index of the list. */
    public String place(int index) {
        return "/" + member + "/" + index;
    }

    /** The list an item stands in. */
    public static Shelf of(Item item) {
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
