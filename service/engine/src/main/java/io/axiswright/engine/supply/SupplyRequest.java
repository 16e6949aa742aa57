package io.axiswright.engine.supply;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * What the AC supply is sized from.
 *
 * @param codeBasis the electrical code to follow
 * @param mains the supply at the machine's terminals
 * @param installation how circuits are run and protected
 * @param loads what is to be fed
 * @param devices protective devices to choose from
 */
public record SupplyRequest(
        CodeBasis codeBasis,
        Mains mains,
        Installation installation,
        @Count(min = 1) List<SupplyLoad> loads,
        List<ProtectiveDevice> devices) {}
