package io.axiswright.engine.wiring;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableGland;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.catalogue.SupplyDisconnector;
import io.axiswright.engine.supply.Disconnect;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What has to be joined, and what can be bought for it.
 *
 * @param joins things that want a cable between them
 * @param runs cables chosen before
 * @param disconnect what must disconnect the machine from its supply; absent if nothing hangs on it
 * @param feederDevice the feeder's protective device, which may do that; absent if there is none
 * @param conduits the conduits that cables of fixed length are drawn through, by who asks for the cables
 * @param cables cables of fixed length
 * @param coupled cables that may be joined two by two where no single one reaches, the cheapest first
 * @param glands cable glands
 * @param disconnectors supply disconnecting devices
 * @param source how the caller gave the catalogue, for pointers
 */
public record WiringRequest(
        List<Join> joins,
        List<CableRun> runs,
        @Nullable Disconnect disconnect,
        @Nullable ProtectiveDevice feederDevice,
        Map<String, List<ConduitOnWay>> conduits,
        List<CableAssembly> cables,
        List<CoupledCables> coupled,
        List<CableGland> glands,
        List<SupplyDisconnector> disconnectors,
        CatalogueSource source) {}
