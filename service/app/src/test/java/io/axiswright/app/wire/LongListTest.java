package io.axiswright.app.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Count;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LongListTest {

    private static final int MOST = 5000;

    record Parcel(String name, @Count(min = 1, max = MOST) List<JsonNode> things) {}

    private static LongList list(String document) throws IOException {
        return LongList.of(new ByteArrayInputStream(document.getBytes(StandardCharsets.UTF_8)), "things", MOST);
    }

    @Test
    void readsUtf8Alone() throws IOException {
        String document = "{\"name\": \"x\", \"things\": [17, {}]}";
        for (Charset charset :
                List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, Charset.forName("UTF-32BE"))) {
            assertThatThrownBy(() -> LongList.of(new ByteArrayInputStream(document.getBytes(charset)), "things", MOST))
                    .isInstanceOf(MalformedJson.class);
        }
        try (LongList marked = list("\uFEFF" + document)) {
            assertThat(marked.require(Parcel.class)).isEqualTo(2);
            assertThat(new String(marked.element(0, 9), StandardCharsets.UTF_8)).isEqualTo("17");
            assertThat(new String(marked.element(1, 9), StandardCharsets.UTF_8)).isEqualTo("{}");
        }
    }

    /** Elements of all kinds, with blanks around, beyond ASCII, and over many buffers. */
    @Test
    void givesEachElementAsALibraryReadsIt() throws IOException {
        var random = new Random(7);
        List<String> kinds = List.of(
                "{\"a\": [1, {\"b\": \"]}\"}], \"ä\": null}",
                "[[], [{}]]",
                "\"Δθ \\\"quoted\\\" \\u00e9\"",
                "-12.5e3",
                "0",
                "true",
                "false",
                "null",
                "\"\"",
                "{}");
        List<String> elements = new ArrayList<>();
        for (int k = 0; k < MOST; k++) {
            elements.add(" ".repeat(random.nextInt(4))
                    + kinds.get(random.nextInt(kinds.size()))
                    + "\n".repeat(random.nextInt(3)));
        }
        String document = "{\"name\": \"ü\", \"things\":[" + String.join(",", elements) + "]}";
        JsonNode expected = JsonMapper.shared().readTree(document).get("things");

        try (LongList list = list(document)) {
            assertThat(list.require(Parcel.class)).isEqualTo(MOST);
            for (int k = 0; k < MOST; k++) {
                byte[] element = list.element(k, 1000);
                assertThat(new String(element, StandardCharsets.UTF_8))
                        .isEqualTo(elements.get(k).strip());
                assertThat(JsonMapper.shared().readTree(element)).isEqualTo(expected.get(k));
            }
        }
    }

    @Test
    void refusesAnElementOfTooManyBytes() throws IOException {
        try (LongList list = list("{\"name\": \"n\", \"things\": [12, 123]}")) {
            assertThat(list.element(0, 2)).hasSize(2);
            assertThatThrownBy(() -> list.element(1, 2)).isInstanceOf(BodyTooLarge.class);
        }
    }

    @Test
    void judgesTheDocumentAsAWhole() throws IOException {
        refused("{\"things\": [1]}", "/name");
        refused("{\"name\": \"n\", \"things\": []}", "/things");
        refused("{\"name\": \"n\", \"things\": [" + "1,".repeat(MOST) + "1]}", "/things");
        refused("{\"name\": \"n\", \"things\": {\"things\": [1]}}", "/things");
        refused("{\"name\": \"n\", \"things\": [1], \"things\": [2]}", "/things");
        refused("{\"name\": \"n\", \"things\": [1], \"more\": {\"a\": []}}", "/more");
        refused("[1]", "");
        for (String text : List.of("", "{\"things\": [1", "{\"things\": [1]} 2", "{\"things\": [{]}]}")) {
            assertThatThrownBy(() -> list(text)).as(text).isInstanceOf(MalformedJson.class);
        }
        byte[] other = "{\"things\": [1]}".getBytes(StandardCharsets.UTF_16BE);
        assertThatThrownBy(() -> LongList.of(new ByteArrayInputStream(other), "things", MOST))
                .isInstanceOf(MalformedJson.class);
    }

    private static void refused(String document, String pointer) throws IOException {
        try (LongList list = list(document)) {
            assertThatThrownBy(() -> list.require(Parcel.class))
                    .isInstanceOfSatisfying(
                            InvalidDesign.class,
                            invalid -> assertThat(invalid.faults())
                                    .extracting("pointer")
                                    .containsExactly(pointer));
        }
    }
}
