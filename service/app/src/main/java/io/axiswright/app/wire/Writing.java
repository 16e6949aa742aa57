package io.axiswright.app.wire;

/** How the values of one class are written. */
@FunctionalInterface
interface Writing {

    void write(Object value, JsonBytes json);
}
