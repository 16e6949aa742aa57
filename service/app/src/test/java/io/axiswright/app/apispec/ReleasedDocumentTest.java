package io.axiswright.app.apispec;

import org.junit.jupiter.api.Test;

/** The document in the repository is the one the service serves. */
class ReleasedDocumentTest extends ApiSpecTest {

    @Test
    void theDocumentIsAsReleased() {
        SpecFiles.hold(
                SpecFiles.folder().resolve("openapi.json"),
                PrettyJson.of(document().root()));
    }
}
