package io.axiswright.engine.wiring;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableEnd;
import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.quantity.Length;
import java.util.List;

/**
 * A cable that is chosen, on its way.
 *
 * @param asker who asked for it ("axis lift-1")
 * @param item catalogue id of the cable
 * @param outerDiameter its outer diameter
 * @param ends its two ends; empty if it is cut from a reel or they are not stated
 * @param enclosures the enclosures it enters, one for each wall
 * @param pointer JSON Pointer, in the request, to what it follows from
 */
public record CableRun(
        String asker, String item, Length outerDiameter, List<CableEnd> ends, List<String> enclosures, String pointer) {

    /**
     * The cables of one way: the first goes through the wall where it begins; of two that are joined, the other through that
     * where the way ends.
     *
     * @param walls the enclosures entered on the way
     */
    public static List<CableRun> along(String asker, LaidCable laid, List<String> walls, String pointer) {
        List<CableAssembly> pieces = laid.pieces();
        if (pieces.size() == 1) {
            return List.of(of(asker, pieces.getFirst(), walls, pointer));
        }
        int first = Math.min(1, walls.size());
        return List.of(
                of(asker, pieces.getFirst(), walls.subList(0, first), pointer),
                of(asker, pieces.getLast(), walls.subList(first, walls.size()), pointer));
    }

    private static CableRun of(String asker, CableAssembly cable, List<String> walls, String pointer) {
        return new CableRun(asker, cable.id(), cable.outerDiameter(), cable.endList(), walls, pointer);
    }
}
