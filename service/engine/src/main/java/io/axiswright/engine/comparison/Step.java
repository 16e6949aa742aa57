package io.axiswright.engine.comparison;

import org.jspecify.annotations.Nullable;

/** One step on the way from a record to a value inside it. */
sealed interface Step {

    /** How the step reads in a path. */
    String text();

    /** Into a record's component. */
    record Member(String name) implements Step {
        @Override
        public String text() {
            return name;
        }
    }

    /**
     * Into a list's element, by its key: the element's own id where it has one, else its place.
     *
     * @param value the element, to be called by what is in it; null if only its key is known
     */
    record Element(String key, int place, @Nullable Object value) implements Step {

        /** An element that is called by its key. */
        Element(String key, int place) {
            this(key, place, null);
        }

        @Override
        public String text() {
            return key;
        }
    }
}
