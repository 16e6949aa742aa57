package io.axiswright.app.apispec;

import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** JSON as people like to read it: what fits a line stands on one. The same document always gives the same text. */
final class PrettyJson {

    private static final int WIDTH = 120;
    private static final String STEP = "  ";

    private PrettyJson() {}

    static String of(JsonNode json) {
        return lines(json, "", 0) + "\n";
    }

    private static String lines(JsonNode json, String indent, int before) {
        String line = line(json);
        if (!json.isContainer() || indent.length() + before + line.length() <= WIDTH) {
            return line;
        }
        String deeper = indent + STEP;
        String separator = ",\n" + deeper;
        if (json.isArray()) {
            return json.valueStream()
                    .map(element -> lines(element, deeper, 1))
                    .collect(Collectors.joining(separator, "[\n" + deeper, "\n" + indent + "]"));
        }
        return json.propertyStream()
                .map(member -> name(member.getKey())
                        + lines(member.getValue(), deeper, name(member.getKey()).length() + 1))
                .collect(Collectors.joining(separator, "{\n" + deeper, "\n" + indent + "}"));
    }

    private static String line(JsonNode json) {
        if (json.isArray()) {
            return json.valueStream().map(PrettyJson::line).collect(Collectors.joining(", ", "[", "]"));
        }
        if (json.isObject()) {
            return json.propertyStream()
                    .map(member -> name(member.getKey()) + line(member.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        return json.toString();
    }

    private static String name(String name) {
        return JsonMapper.shared().writeValueAsString(name) + ": ";
    }
}
