package io.axiswright.app.wire;

/**
 * How the last value at a place was written. The next one there is mostly of the same class, and comparing classes is cheaper
 * than looking one up.
 *
 * @param type the class of the value
 * @param writing how values of the class are written
 */
record LastWriting(Class<?> type, Writing writing) {

    /** Nothing has been written yet; no value is of this class. */
    static final LastWriting NONE = new LastWriting(void.class, (value, _) -> {
        throw new IllegalStateException("a value of no class: " + value);
    });

    /** This if the value is of the same class, otherwise how it is written. */
    LastWriting orOf(Object value) {
        Class<?> next = value.getClass();
        return next == type ? this : new LastWriting(next, Writings.of(next));
    }
}
