package io.axiswright.app.project;

import java.time.Instant;

/**
 * A word that somebody put to a revision.
 *
 * @param name the word, such as {@code quoted} or {@code as-built}; {@code released} locks the revision
 * @param author who put it there
 * @param setAt when
 */
record Label(String name, String author, Instant setAt) {

    /** The label that locks: no label of its revision comes or goes any more. */
    static final String RELEASED = "released";
}
