package io.axiswright.app.wire;

import org.jspecify.annotations.Nullable;

/** A place in a document; written out as a JSON Pointer (RFC 6901) only when somebody asks. */
record Path(@Nullable Path parent, String name) {

    /** The whole document. */
    static final Path ROOT = new Path(null, "");

    /** A member of the object at this place. */
    Path member(String name) {
        return new Path(this, name);
    }

    /** An element of the array at this place. */
    Path element(int index) {
        return new Path(this, Integer.toString(index));
    }

    /** The JSON Pointer. */
    String pointer() {
        return parent == null
                ? ""
                : parent.pointer() + "/" + name.replace("~", "~0").replace("/", "~1");
    }
}
