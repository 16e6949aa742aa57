package io.axiswright.client;

import io.axiswright.app.Axiswright;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** A test with the service as it is delivered, its embedded database included. */
@SpringBootTest(classes = Axiswright.class, webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
abstract class ClientTest {

    private static final Path EXAMPLES = Path.of("..", "examples");

    @LocalServerPort
    private int port;

    @DynamicPropertySource
    static void ownDatabase(DynamicPropertyRegistry properties) throws IOException {
        Path data = Files.createTempDirectory(
                Files.createDirectories(Path.of("target")).toAbsolutePath(), "data");
        properties.add("axiswright.data-directory", data::toString);
    }

    String address() {
        return "http://localhost:" + port;
    }

    /** A request among the examples of the API. */
    static String example(String name) throws IOException {
        return Files.readString(EXAMPLES.resolve(name + ".json"));
    }
}
