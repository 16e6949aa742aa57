package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.Item;

/** What a line's quantity counts, with its UN/CEFACT Recommendation 20 common code. */
public enum SaleUnit {
    /** Whole pieces. */
    PIECE("H87"),
    /** Metres. */
    METRE("MTR");

    private final String code;

    SaleUnit(String code) {
        this.code = code;
    }

    /** Its UN/CEFACT Recommendation 20 common code. */
    public String code() {
        return code;
    }

    /** What the item is sold by: bulk cable by the metre, all else by the piece. */
    public static SaleUnit of(Item item) {
        return item instanceof BulkCable ? METRE : PIECE;
    }
}
