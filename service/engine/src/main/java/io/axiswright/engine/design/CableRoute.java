package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of the way that power cables take, and which of them run along it, each load with a cable of its own from the mains
 * panel. A cable may pass several stretches; the worst counts.
 *
 * @param id its name, unique in the design
 * @param axes axes whose power cable runs along it, with those of their fans; none if absent
 * @param feeder whether the feeder runs along it; not if absent
 * @param controlSupplies whether the cables of the control supplies run along it; not if absent
 * @param containment what encloses them; open (on a tray or a surface) if absent
 * @param length how long the stretch is; long if absent. Up to 24 in (0.61 m) NFPA 70 neither adjusts ampacities nor keeps conduit
 *     to the fill of longer ones
 * @param bendRadius the tightest bend, at the inner edge of the cables; not examined if absent
 * @param moving whether the cables are flexed along it, as in a drag chain; not if absent
 * @param otherDiameters outer diameters of other cables along it, that carry signals or 24 V and are not counted as loaded; none if
 *     absent
 * @param gland clamping range of the glands through which each cable enters and leaves; not examined if absent
 */
public record CableRoute(
        String id,
        @AnyOrder @Count(max = 1024) List<String> axes,
        boolean feeder,
        boolean controlSupplies,
        @Nullable Containment containment,
        @Bounds(above = 0, max = 1000) @Nullable Length length,
        @Bounds(above = 0, max = 100) @Nullable Length bendRadius,
        boolean moving,

        @AnyOrder @Count(max = 1024) @Bounds(above = 0, max = 1)
        List<Length> otherDiameters,

        @Nullable ClampingRange gland) {

    /** Keeps the lists from being changed. */
    public CableRoute {
        axes = List.copyOf(axes);
        otherDiameters = List.copyOf(otherDiameters);
    }
}
