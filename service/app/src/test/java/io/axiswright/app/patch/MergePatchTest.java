package io.axiswright.app.patch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class MergePatchTest {

    /** RFC 7396, Appendix A, all its cases in their order; the first line is the example of section 1. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"a\":\"b\",\"c\":{\"d\":\"e\",\"f\":\"g\"}} | {\"a\":\"z\",\"c\":{\"f\":null}} | {\"a\":\"z\",\"c\":{\"d\":\"e\"}}",
                "{\"a\":\"b\"} | {\"a\":\"c\"} | {\"a\":\"c\"}",
                "{\"a\":\"b\"} | {\"b\":\"c\"} | {\"a\":\"b\",\"b\":\"c\"}",
                "{\"a\":\"b\"} | {\"a\":null} | {}",
                "{\"a\":\"b\",\"b\":\"c\"} | {\"a\":null} | {\"b\":\"c\"}",
                "{\"a\":[\"b\"]} | {\"a\":\"c\"} | {\"a\":\"c\"}",
                "{\"a\":\"c\"} | {\"a\":[\"b\"]} | {\"a\":[\"b\"]}",
                "{\"a\":{\"b\":\"c\"}} | {\"a\":{\"b\":\"d\",\"c\":null}} | {\"a\":{\"b\":\"d\"}}",
                "{\"a\":[{\"b\":\"c\"}]} | {\"a\":[1]} | {\"a\":[1]}",
                "[\"a\",\"b\"] | [\"c\",\"d\"] | [\"c\",\"d\"]",
                "{\"a\":\"b\"} | [\"c\"] | [\"c\"]",
                "{\"a\":\"foo\"} | null | null",
                "{\"a\":\"foo\"} | \"bar\" | \"bar\"",
                "{\"e\":null} | {\"a\":1} | {\"e\":null,\"a\":1}",
                "[1,2] | {\"a\":\"b\",\"c\":null} | {\"a\":\"b\"}",
                "{} | {\"a\":{\"bb\":{\"ccc\":null}}} | {\"a\":{\"bb\":{}}}"
            })
    void makesOfADocumentWhatTheStandardSays(String original, String patch, String result) {
        JsonNode target = json(original);
        assertThat(MergePatch.apply(target, json(patch))).isEqualTo(json(result));
        assertThat(target).as("the target stays as it was").isEqualTo(json(original));
    }

    private static JsonNode json(String text) {
        return JsonMapper.shared().readTree(text);
    }
}
