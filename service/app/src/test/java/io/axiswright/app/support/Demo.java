package io.axiswright.app.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Requests made from the demonstration documents. */
public final class Demo {

    private Demo() {}

    /** The demonstration catalogue under a name of the test's own. */
    public static ObjectNode catalogue(String name) {
        return read("catalogue").put("name", name);
    }

    /** A revision of the demonstration design. */
    public static ObjectNode revision(String message, String catalogueName, int catalogueVersion) {
        ObjectNode revision = JsonMapper.shared().createObjectNode();
        revision.put("message", message).put("author", "tester").put("codeBasis", "IEC_60204_1");
        revision.putObject("catalogue").put("name", catalogueName).put("version", catalogueVersion);
        revision.set("design", read("design"));
        return revision;
    }

    private static ObjectNode read(String name) {
        try (var in = Objects.requireNonNull(Demo.class.getResourceAsStream("/demo/" + name + ".json"))) {
            return (ObjectNode) JsonMapper.shared().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
