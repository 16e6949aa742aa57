package io.axiswright.engine.comparison;

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

    /** Into a list's element, by its key: the element's own id where it has one, else its place. */
    record Element(String key, int place) implements Step {
        @Override
        public String text() {
            return key;
        }
    }
}
