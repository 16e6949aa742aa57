package io.axiswright.app.wire;

import tools.jackson.core.JsonGenerator;

/** How the values of one class are written. */
@FunctionalInterface
interface Writing {

    void write(Object value, JsonGenerator json);
}
