package io.axiswright.engine.catalogue;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Power cable by the metre.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param size size of its loaded conductors
 * @param cores number of cores, protective conductor included
 * @param insulation its insulation
 * @param outerDiameter outer diameter
 * @param flexible whether it may move
 * @param reelLength length of cable on a reel, 1 m to 5 km, where it is sold by whole reels only; any length is sold if absent
 * @param cutAllowance what every piece cut from a reel takes beyond its length: the cut and the preparation of its ends, up to
 *     10 m and less than a reel; none if absent
 * @param material what its conductors are made of; copper if absent
 */
public record BulkCable(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        ConductorSize size,
        @Bounds(min = 2, max = 7) int cores,
        Insulation insulation,
        @Bounds(above = 0) Length outerDiameter,
        boolean flexible,
        @Bounds(min = 1, max = 5000) @Nullable Length reelLength,
        @Bounds(min = 0, max = 10) @Nullable Length cutAllowance,
        @Nullable ConductorMaterial material)
        implements Item {

    /** Cable sold in any length. */
    public BulkCable(
            String id,
            String description,
            @Nullable Money price,
            List<Need> needs,
            ConductorSize size,
            int cores,
            Insulation insulation,
            Length outerDiameter,
            boolean flexible) {
        this(id, description, price, needs, size, cores, insulation, outerDiameter, flexible, null, null, null);
    }

    /** What its conductors are made of. */
    public ConductorMaterial metal() {
        return material == null ? ConductorMaterial.COPPER : material;
    }
}
