package io.axiswright.engine.topology;

import org.jspecify.annotations.Nullable;

/** Stops a search from another thread. */
final class SearchStop {

    private volatile @Nullable Runnable way;
    private volatile boolean asked;

    /** Says how the search can be stopped from now on. */
    void by(Runnable stopping) {
        way = stopping;
    }

    boolean asked() {
        return asked;
    }

    /** May be asked again and again: a search that was just beginning may not have heard it. */
    void ask() {
        asked = true;
        Runnable stopping = way;
        if (stopping != null) {
            stopping.run();
        }
    }
}
