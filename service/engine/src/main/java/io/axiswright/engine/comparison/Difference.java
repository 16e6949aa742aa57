package io.axiswright.engine.comparison;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A value that is not the same in two record graphs, with the way to it. */
record Difference(
        List<Step> path,
        ChangeKind kind,
        @Nullable Object before,
        @Nullable Object after) {

    /** The way in words, escaped like a JSON Pointer but with list elements named by their id. */
    String place() {
        StringBuilder place = new StringBuilder();
        for (Step step : path) {
            place.append('/').append(step.text().replace("~", "~0").replace("/", "~1"));
        }
        return place.toString();
    }
}
