package io.axiswright.app.project;

import com.fasterxml.jackson.annotation.JsonTypeName;

/**
 * An older revision, brought back.
 *
 * @param restoration which one, and why
 */
@JsonTypeName("RESTORATION")
record RestoredRevision(Restoration restoration) implements HeadChange {

    @Override
    public String member() {
        return "restoration";
    }
}
