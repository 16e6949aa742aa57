package io.axiswright.app.embedded;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.axiswright.app.support.Demo;
import io.axiswright.app.support.Service;
import io.restassured.http.ContentType;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole service in its own process, killed hard in the middle of work and started again at once. */
@Tag("slow")
class HardKillTest {

    @TempDir
    Path directory;

    @Test
    void findsEverythingAcknowledgedAfterAKill() throws Exception {
        int stored = 0;
        for (int round = 1; round <= 2; round++) {
            Service service = Service.launch(directory, "round-" + round);
            int port = service.port();
            for (int version = 1; version <= stored; version++) {
                given().port(port)
                        .get("/v1/catalogues/kept/versions/{version}", version)
                        .then()
                        .statusCode(200)
                        .body("remark", equalTo("version " + version));
            }
            for (int k = 0; k < 3; k++) {
                store(port, ++stored);
            }
            long server = serverPid();
            service.kill();
            assertThat(ProcessHandle.of(server)).as("orphaned server").isPresent();
        }
        try (var service = Service.launch(directory, "last")) {
            given().port(service.port())
                    .get("/v1/catalogues/kept")
                    .then()
                    .statusCode(200)
                    .body("latest.version", equalTo(stored));

            var second = Service.launch(directory, "second");
            assertThat(second.exitCode()).isNotZero();
            assertThat(second.log())
                    .contains("is in use by another running service")
                    .contains("--axiswright.data-directory=<path>")
                    .doesNotContain("\tat io.axiswright");
        }
        assertThat(directory.resolve("cluster/postmaster.pid")).doesNotExist();
    }

    private long serverPid() throws Exception {
        return Long.parseLong(Files.readAllLines(directory.resolve("cluster/postmaster.pid"))
                .getFirst()
                .strip());
    }

    private static void store(int port, int version) {
        given().port(port)
                .contentType(ContentType.JSON)
                .body(Demo.catalogue("kept").put("remark", "version " + version).toString())
                .post("/v1/catalogues")
                .then()
                .statusCode(201)
                .body("version", equalTo(version));
    }
}
