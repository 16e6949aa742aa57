package io.axiswright.app.project;

import com.fasterxml.jackson.annotation.JsonTypeName;

/**
 * The next revision itself; nothing of the latest one is in it.
 *
 * @param revision the next state of the project
 */
@JsonTypeName("REVISION")
record WholeRevision(NewRevision revision) implements HeadChange {

    @Override
    public String member() {
        return "revision";
    }
}
