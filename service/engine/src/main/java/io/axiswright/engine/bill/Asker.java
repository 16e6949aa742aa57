package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.condition.Facts;
import io.axiswright.engine.condition.Reach;
import java.util.List;

/**
 * A part of the design that the catalogue's demand rules are held against.
 *
 * @param reach what it is
 * @param name what it is called where it asks ("axis lift-1"), by which its own demands are known; no two have one name
 * @param pointer JSON Pointer, in the request, to it or to what it follows from
 * @param conditions the conditions that hold for it; they decide the CONDITIONAL needs of what it asks for
 * @param facts what is known of it, and of the machine
 */
public record Asker(Reach reach, String name, String pointer, List<DemandCondition> conditions, Facts facts) {

    /** Keeps the conditions from being changed. */
    public Asker {
        conditions = List.copyOf(conditions);
    }
}
