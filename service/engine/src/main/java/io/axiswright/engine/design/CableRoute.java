package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of the way that cables take, and which of them run along it: power cables, each load with a cable of its own from the mains
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
 * @param axisAssemblies axes whose cables of fixed length, the spur and that of the stop signal, run along it; a moulded end has to pass its
 *     conduit, through which it is drawn while that is empty, or is cut off and made anew. What they take of its inside is counted among
 *     {@code otherDiameters}. None if absent
 * @param placeAssemblies places whose gateways' cables of fixed length, the link, the 24 V feed and that of the stop signal, run along it, all
 *     else as of {@code axisAssemblies}; none if absent
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

        @Nullable ClampingRange gland,
        @AnyOrder @Count(max = 1024) @Nullable List<String> axisAssemblies,
        @AnyOrder @Count(max = 1024) @Nullable List<String> placeAssemblies) {

    /** A route of power cables alone. */
    public CableRoute(
            String id,
            List<String> axes,
            boolean feeder,
            boolean controlSupplies,
            @Nullable Containment containment,
            @Nullable Length length,
            @Nullable Length bendRadius,
            boolean moving,
            List<Length> otherDiameters,
            @Nullable ClampingRange gland) {
        this(
                id,
                axes,
                feeder,
                controlSupplies,
                containment,
                length,
                bendRadius,
                moving,
                otherDiameters,
                gland,
                null,
                null);
    }

    /** Keeps the lists from being changed. */
    public CableRoute {
        axes = List.copyOf(axes);
        otherDiameters = List.copyOf(otherDiameters);
        axisAssemblies = axisAssemblies == null ? null : List.copyOf(axisAssemblies);
        placeAssemblies = placeAssemblies == null ? null : List.copyOf(placeAssemblies);
    }

    /** The axes whose cables of fixed length run along it, be they absent or none. */
    public List<String> axisAssemblyList() {
        return axisAssemblies == null ? List.of() : axisAssemblies;
    }

    /** The places whose gateways' cables of fixed length run along it, be they absent or none. */
    public List<String> placeAssemblyList() {
        return placeAssemblies == null ? List.of() : placeAssemblies;
    }
}
