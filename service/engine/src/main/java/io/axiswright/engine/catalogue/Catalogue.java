package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Count;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What can be bought, in one currency. The order of its lists means nothing: of items that serve alike at one price, the one is taken
 * whose id comes first, numbers in it by value.
 *
 * @param name its name
 * @param currency ISO 4217 code, of a currency in use, all its prices are in
 * @param remark anything to be said about it, for example that it is invented
 * @param driveUnits drive units
 * @param holdingBrakes holding brakes
 * @param gateways gateway types
 * @param controlSupplies 24 V supplies
 * @param cableAssemblies cables of fixed length
 * @param bulkCables power cable by the metre
 * @param protectiveDevices fuses and breakers
 * @param brakingUnits braking units
 * @param ventilationKits ventilation kits
 * @param footKits foot kits
 * @param fasteningParts fastening parts
 * @param accessories everything else
 * @param gearUnits gear units; none if absent
 * @param outputProtections protection of 24 V output circuits; none if absent
 * @param bufferUnits buffers of control supplies; none if absent
 * @param cableGlands cable glands; none if absent
 * @param disconnectors supply disconnecting devices; none if absent
 * @param saleTerms packs, minimum orders, price breaks, masses and lead times of items; all sold singly at one price if absent
 * @param demandRules what a bill demands beside what the design asks for and what single items need; nothing if absent
 * @param exclusions items that must not stand on one machine; none if absent
 */
public record Catalogue(
        String name,
        String currency,
        @Nullable String remark,
        @AnyOrder List<DriveUnit> driveUnits,
        @AnyOrder List<HoldingBrake> holdingBrakes,
        @AnyOrder List<GatewayType> gateways,
        @AnyOrder List<ControlSupply> controlSupplies,
        @AnyOrder List<CableAssembly> cableAssemblies,
        @AnyOrder List<BulkCable> bulkCables,
        @AnyOrder List<ProtectiveDevice> protectiveDevices,
        @AnyOrder List<BrakingUnit> brakingUnits,
        @AnyOrder List<VentilationKit> ventilationKits,
        @AnyOrder List<FootKit> footKits,
        @AnyOrder List<FasteningPart> fasteningParts,
        @AnyOrder List<Accessory> accessories,
        @AnyOrder @Nullable List<GearUnit> gearUnits,
        @AnyOrder @Nullable List<OutputProtection> outputProtections,
        @AnyOrder @Nullable List<BufferUnit> bufferUnits,
        @AnyOrder @Nullable List<CableGland> cableGlands,
        @AnyOrder @Nullable List<SupplyDisconnector> disconnectors,
        @AnyOrder @Nullable List<SaleTerms> saleTerms,
        @AnyOrder @Count(max = 1000) @Nullable List<DemandRule> demandRules,
        @AnyOrder @Count(max = 1000) @Nullable List<Exclusion> exclusions) {

    /** Without any of the members that may be absent. */
    public Catalogue(
            String name,
            String currency,
            @Nullable String remark,
            List<DriveUnit> driveUnits,
            List<HoldingBrake> holdingBrakes,
            List<GatewayType> gateways,
            List<ControlSupply> controlSupplies,
            List<CableAssembly> cableAssemblies,
            List<BulkCable> bulkCables,
            List<ProtectiveDevice> protectiveDevices,
            List<BrakingUnit> brakingUnits,
            List<VentilationKit> ventilationKits,
            List<FootKit> footKits,
            List<FasteningPart> fasteningParts,
            List<Accessory> accessories) {
        this(
                name,
                currency,
                remark,
                driveUnits,
                holdingBrakes,
                gateways,
                controlSupplies,
                cableAssemblies,
                bulkCables,
                protectiveDevices,
                brakingUnits,
                ventilationKits,
                footKits,
                fasteningParts,
                accessories,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    /** Its gear units, be they absent or none. */
    public List<GearUnit> gearStock() {
        return gearUnits == null ? List.of() : gearUnits;
    }

    /** Its protection of 24 V output circuits, be it absent or none. */
    public List<OutputProtection> outputProtectionStock() {
        return outputProtections == null ? List.of() : outputProtections;
    }

    /** Its buffers, be they absent or none. */
    public List<BufferUnit> bufferStock() {
        return bufferUnits == null ? List.of() : bufferUnits;
    }

    /** Its cable glands, be they absent or none. */
    public List<CableGland> glandStock() {
        return cableGlands == null ? List.of() : cableGlands;
    }

    /** Its supply disconnecting devices, be they absent or none. */
    public List<SupplyDisconnector> disconnectorStock() {
        return disconnectors == null ? List.of() : disconnectors;
    }

    /** Its terms of sale, be they absent or none. */
    public List<SaleTerms> saleTermsList() {
        return saleTerms == null ? List.of() : saleTerms;
    }

    /** Its demand rules, be they absent or none. */
    public List<DemandRule> demandRuleList() {
        return demandRules == null ? List.of() : demandRules;
    }

    /** Its exclusions, be they absent or none. */
    public List<Exclusion> exclusionList() {
        return exclusions == null ? List.of() : exclusions;
    }

    /** The cables of fixed length that may be joined two by two, the cheapest pair first. */
    public List<CoupledCables> coupledCables() {
        return CoupledCables.of(cableAssemblies, id -> find(id).orElseThrow());
    }

    /** Every item by the JSON Pointer to it in the catalogue, in the order of {@link #items}. */
    public SequencedMap<String, Item> places() {
        var filled = new int[Shelf.values().length];
        var places = new LinkedHashMap<String, Item>();
        items().forEach(item -> {
            Shelf shelf = Shelf.of(item);
            places.put(shelf.place(filled[shelf.ordinal()]++), item);
        });
        return places;
    }

    /** Every item of every kind, in the order of the members and of each list. */
    public Stream<Item> items() {
        return Stream.<List<? extends Item>>of(
                        driveUnits,
                        holdingBrakes,
                        gateways,
                        controlSupplies,
                        cableAssemblies,
                        bulkCables,
                        protectiveDevices,
                        brakingUnits,
                        ventilationKits,
                        footKits,
                        fasteningParts,
                        accessories,
                        gearStock(),
                        outputProtectionStock(),
                        bufferStock(),
                        glandStock(),
                        disconnectorStock())
                .flatMap(List::stream);
    }

    /** The item of that id, whatever its kind. */
    public Optional<Item> find(String id) {
        return items().filter(item -> item.id().equals(id)).findFirst();
    }
}
