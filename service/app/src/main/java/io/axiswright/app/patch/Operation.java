package io.axiswright.app.patch;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.List;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;

/**
 * One operation of a JSON Patch. Members it does not know are left alone, as RFC 6902 wants it.
 *
 * @param index its place in the patch, from 0
 * @param json the operation
 */
record Operation(int index, JsonNode json) {

    /** As deep as a body may nest. */
    static final int DEEPEST = 64;

    /** What it does. */
    String word() {
        return text("op");
    }

    /** The place a member names. */
    JsonPointer pointer(String member) {
        String text = text(member);
        if (text.chars().filter(c -> c == '/').count() > DEEPEST) {
            throw fault(
                    member,
                    FaultCode.OUT_OF_RANGE,
                    "No document nests so deep.",
                    "a JSON Pointer (RFC 6901) of at most " + DEEPEST + " steps");
        }
        try {
            return JsonPointer.compile(text);
        } catch (IllegalArgumentException e) {
            throw fault(
                    member,
                    FaultCode.UNKNOWN_VALUE,
                    "\"" + text + "\" is no JSON Pointer.",
                    "a JSON Pointer (RFC 6901)");
        }
    }

    /** The value it brings; null is one, too. */
    JsonNode value() {
        JsonNode value = json.get("value");
        if (value == null) {
            throw fault("value", FaultCode.MISSING, "There is no value.", "any JSON");
        }
        return value;
    }

    private String text(String member) {
        JsonNode value = json.get(member);
        if (value == null) {
            throw fault(member, FaultCode.MISSING, "There is no " + member + ".", "a text");
        }
        if (!value.isString()) {
            throw fault(member, FaultCode.WRONG_TYPE, "The " + member + " is no text.", "a text");
        }
        return value.asString();
    }

    /** The place a member names is not in the document. */
    InvalidDesign nothingThere(String member, JsonPointer path) {
        return fault(
                member,
                FaultCode.DANGLING_REFERENCE,
                "Nothing stands at " + path + " when the operation is reached.",
                "a place in the document, as the operations before have left it");
    }

    /** A fault of one of its members. */
    InvalidDesign fault(String member, FaultCode code, String detail, String accepted) {
        return faultAt("/" + index + "/" + member, code, detail, accepted);
    }

    /** A fault at a place of the patch. */
    static InvalidDesign faultAt(String pointer, FaultCode code, String detail, String accepted) {
        return new InvalidDesign(List.of(new Fault(pointer, code, detail, accepted)));
    }
}
