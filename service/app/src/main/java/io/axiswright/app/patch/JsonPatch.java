package io.axiswright.app.patch;

import io.axiswright.app.problem.Conflict;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.Comparator;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** JSON Patch (RFC 6902): operations one after the other, all or none. */
public final class JsonPatch {

    /** Its media type. */
    public static final String MEDIA_TYPE = "application/json-patch+json";

    /** Numbers are equal by value, however they are written (RFC 6902, 4.6). */
    private static final Comparator<JsonNode> EQUALITY = (a, b) -> {
        boolean equal = a.isNumber() && b.isNumber() ? a.decimalValue().compareTo(b.decimalValue()) == 0 : a.equals(b);
        return equal ? 0 : 1;
    };

    private JsonNode document;
    private final CopyAllowance allowance = new CopyAllowance();

    private JsonPatch(JsonNode document) {
        this.document = document;
    }

    /**
     * The document with the patch applied; the target itself stays as it is.
     *
     * @throws InvalidDesign if the patch is none, or names places that are not there; pointers lead into the patch
     * @throws Conflict if a test of the patch fails
     */
    public static JsonNode apply(JsonNode target, JsonNode patch) {
        if (!(patch instanceof ArrayNode operations)) {
            throw Operation.faultAt("", FaultCode.WRONG_TYPE, "A JSON Patch is a list.", "a list of operations");
        }
        var patched = new JsonPatch(target.deepCopy());
        for (int k = 0; k < operations.size(); k++) {
            patched.apply(new Operation(k, operations.get(k)));
        }
        return patched.document;
    }

    private void apply(Operation operation) {
        JsonPointer path = operation.pointer("path");
        switch (operation.word()) {
            case "add" -> add(operation, path, operation.value());
            case "remove" -> remove(operation, "path", path);
            case "replace" -> replace(operation, path, operation.value());
            case "move" -> move(operation, operation.pointer("from"), path);
            case "copy" -> add(operation, path, copy(operation, operation.pointer("from")));
            case "test" -> test(operation, path, operation.value());
            default ->
                throw operation.fault(
                        "op",
                        FaultCode.UNKNOWN_VALUE,
                        "\"" + operation.word() + "\" is no operation.",
                        "add, remove, replace, move, copy or test");
        }
    }

    private JsonNode find(Operation operation, String member, JsonPointer path) {
        JsonNode found = document.at(path);
        if (found.isMissingNode()) {
            throw operation.nothingThere(member, path);
        }
        return found;
    }

    private JsonNode copy(Operation operation, JsonPointer from) {
        JsonNode found = find(operation, "from", from);
        if (!allowance.take(found)) {
            throw operation.fault(
                    "from",
                    FaultCode.OUT_OF_RANGE,
                    "With this the patch copies too much.",
                    "at most " + CopyAllowance.MOST + " values copied by a patch, none nested deeper than "
                            + Operation.DEEPEST);
        }
        return found.deepCopy();
    }

    private void add(Operation operation, JsonPointer path, JsonNode value) {
        if (path.matches()) {
            document = value;
            return;
        }
        String name = path.last().getMatchingProperty();
        switch (document.at(path.head())) {
            case ObjectNode object -> object.set(name, value);
            case ArrayNode array when name.equals("-") -> array.add(value);
            case ArrayNode array
            when isIndex(path, array.size()) -> array.insert(path.last().getMatchingIndex(), value);
            default -> throw operation.nothingThere("path", path);
        }
    }

    private static boolean isIndex(JsonPointer path, int largest) {
        int index = path.last().getMatchingIndex();
        return index >= 0 && index <= largest;
    }

    private JsonNode remove(Operation operation, String member, JsonPointer path) {
        JsonNode removed = find(operation, member, path);
        if (path.matches()) {
            throw operation.fault(
                    member, FaultCode.INCONSISTENT, "The whole document cannot be removed.", "a place in the document");
        }
        switch (document.at(path.head())) {
            case ObjectNode object -> object.remove(path.last().getMatchingProperty());
            case ArrayNode array -> array.remove(path.last().getMatchingIndex());
            default -> throw new IllegalStateException("what was found stands in something");
        }
        return removed;
    }

    private void replace(Operation operation, JsonPointer path, JsonNode value) {
        find(operation, "path", path);
        if (path.matches()) {
            document = value;
            return;
        }
        switch (document.at(path.head())) {
            case ObjectNode object -> object.set(path.last().getMatchingProperty(), value);
            case ArrayNode array -> array.set(path.last().getMatchingIndex(), value);
            default -> throw new IllegalStateException("what was found stands in something");
        }
    }

    private void move(Operation operation, JsonPointer from, JsonPointer path) {
        if (path.toString().startsWith(from + "/")) {
            throw operation.fault(
                    "from",
                    FaultCode.INCONSISTENT,
                    "A value cannot be moved into itself.",
                    "a place that the path does not stand in");
        }
        if (from.equals(path)) {
            find(operation, "from", from);
            return;
        }
        add(operation, path, remove(operation, "from", from));
    }

    private void test(Operation operation, JsonPointer path, JsonNode value) {
        if (!find(operation, "path", path).equals(EQUALITY, value)) {
            throw new Conflict("Operation " + operation.index() + " of the patch tests " + path
                    + ", but something else stands there.");
        }
    }
}
