package io.axiswright.app.support;

import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;

/** Where pointers of answers lead in the body that was sent. */
public final class Pointers {

    private Pointers() {}

    /** Whether the pointer leads to something that stands in the body. */
    public static boolean leadsToSomething(JsonNode body, String pointer) {
        return !body.at(JsonPointer.compile(pointer)).isMissingNode();
    }

    /** Whether the pointer of a fault leads to something, or to where a missing member belongs. */
    public static boolean leadsToAPlace(JsonNode body, String pointer, String code) {
        if (leadsToSomething(body, pointer)) {
            return true;
        }
        JsonPointer owner = JsonPointer.compile(pointer).head();
        return code.equals("MISSING") && owner != null && body.at(owner).isObject();
    }
}
