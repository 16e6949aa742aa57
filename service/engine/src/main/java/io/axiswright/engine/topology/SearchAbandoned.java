package io.axiswright.engine.topology;

/** A search was given up because nobody waits for its answer any more. */
public final class SearchAbandoned extends RuntimeException {

    private static final long serialVersionUID = 1;

    SearchAbandoned() {
        super("nobody waits for this layout any more");
    }
}
