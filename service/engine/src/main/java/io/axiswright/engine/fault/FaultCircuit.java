package io.axiswright.engine.fault;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.supply.Connection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A circuit behind one protective device; each of its ends is run from the device by itself.
 *
 * @param id the circuit
 * @param pointer JSON Pointer, in the request of the caller, to what it follows from
 * @param connection how it is connected
 * @param neutral whether it has a neutral
 * @param material what its conductors are made of
 * @param conductor size of its lines, and of its neutral; absent if none was found
 * @param protectiveConductor size of its protective conductor; absent if none was found
 * @param device its protective device; absent if none was found
 * @param ends what it leads to
 */
public record FaultCircuit(
        String id,
        String pointer,
        Connection connection,
        boolean neutral,
        ConductorMaterial material,
        @Nullable ConductorSize conductor,
        @Nullable ConductorSize protectiveConductor,
        @Nullable ProtectiveDevice device,
        List<CircuitEnd> ends) {

    /** Keeps the list from being changed afterwards. */
    public FaultCircuit {
        ends = List.copyOf(ends);
    }

    /** A circuit of copper. */
    public FaultCircuit(
            String id,
            String pointer,
            Connection connection,
            boolean neutral,
            @Nullable ConductorSize conductor,
            @Nullable ConductorSize protectiveConductor,
            @Nullable ProtectiveDevice device,
            List<CircuitEnd> ends) {
        this(id, pointer, connection, neutral, ConductorMaterial.COPPER, conductor, protectiveConductor, device, ends);
    }
}
