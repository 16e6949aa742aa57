package io.axiswright.client;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.caoccao.javet.interop.NodeRuntime;
import com.caoccao.javet.interop.V8Host;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.JarURLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Test;

/** The TypeScript client, compiled strictly by the compiler of the language and run by a Node inside this JVM. */
class TypeScriptClientTest extends ClientTest {

    private static final Path SOURCES = Path.of("src", "test", "typescript").toAbsolutePath();
    private static final Path WORK = Path.of("target", "typescript").toAbsolutePath();
    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void sizesKeepsAndCompares() throws Exception {
        Path compiled = WORK.resolve("compiled");
        try (NodeRuntime node = V8Host.getNodeInstance().createV8Runtime()) {
            assertThat(compile(node, compiled)).isEmpty();
            JsonNode outcome = JSON.readTree(tell(node, compiled));

            assertThat(outcome.get("buildable").asBoolean()).isTrue();
            // 250 + 60 + 250 + 40 ms; then both moves take 200 ms for 250 ms
            assertThat(outcome.get("cyclePeriod").asDouble()).isCloseTo(0.6, within(1e-9));
            assertThat(outcome.get("difference").asDouble()).isCloseTo(-0.1, within(1e-9));
            assertThat(outcome.get("together")).extracting(JsonNode::asText).containsExactly("change-2", "change-3");
            assertThat(outcome.get("changes"))
                    .extracting(JsonNode::asText)
                    .containsExactly(
                            "/design/axes/tamp-lift/mechanism/load",
                            "/design/axes/tamp-lift/cycle/segments/0/duration",
                            "/design/axes/tamp-lift/cycle/segments/2/duration");
            assertThat(outcome.get("refused").asInt()).isEqualTo(412);
        }
    }

    private static String compile(NodeRuntime node, Path compiled) throws Exception {
        Path story =
                Files.copy(SOURCES.resolve("story.ts"), WORK.resolve("story.ts"), StandardCopyOption.REPLACE_EXISTING);
        node.getGlobalObject().set("typescript", compiler().toString());
        node.getGlobalObject().set("source", story.toString());
        node.getGlobalObject().set("output", compiled.toString());
        // as text: run as a file it would change the directory this process works in
        return node.getExecutor(Files.readString(SOURCES.resolve("compile.js"))).executeString();
    }

    private String tell(NodeRuntime node, Path compiled) throws Exception {
        String examples = "{\"catalogue\": %s, \"system\": %s, \"first\": %s, \"second\": %s}"
                .formatted(
                        example("Catalogue.request.bench-list"),
                        example("SizingRequest.request.label-applicator"),
                        example("addRevision.request.first-state"),
                        example("addRevision.request.heavier-pad-and-faster-stroke"));
        node.getGlobalObject().set("story", compiled.resolve("story.js").toString());
        node.getGlobalObject().set("address", address());
        node.getGlobalObject().set("examples", examples);
        node.getExecutor("""
                        require(story).story(address, JSON.parse(examples)).then(
                            outcome => { globalThis.outcome = JSON.stringify(outcome); },
                            error => { globalThis.outcome = 'failed: ' + (error.stack || error); });
                        """).executeVoid();
        node.await();
        return node.getGlobalObject().getString("outcome");
    }

    /** The compiler reads the declarations of the language as files beside it. */
    private static Path compiler() throws IOException {
        var place =
                Objects.requireNonNull(TypeScriptClientTest.class.getResource("/META-INF/resources/webjars/typescript/"
                        + System.getProperty("typescript.version") + "/lib/typescript.js"));
        Path folder = Files.createDirectories(WORK.resolve("compiler"));
        try (JarFile jar = ((JarURLConnection) place.openConnection()).getJarFile()) {
            for (var entry : jar.stream().toList()) {
                String name = entry.getName().replaceFirst(".*/lib/", "");
                if (name.matches("typescript\\.js|lib\\..*\\.d\\.ts")) {
                    try (var content = jar.getInputStream(entry)) {
                        Files.copy(content, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
                    }
                }
            }
        }
        return folder.resolve("typescript.js");
    }
}
