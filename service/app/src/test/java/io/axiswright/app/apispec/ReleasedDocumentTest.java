package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

/** The document in the repository is the one the service serves, and no callers of it are left behind. */
class ReleasedDocumentTest extends ApiSpecTest {

    private static final String ON_PURPOSE = "axiswright.break-api";
    private static final Path RELEASED = SpecFiles.folder().resolve("openapi.json");

    /** Breaks are looked for before the file may be rewritten, so that an update hides none. */
    @Test
    void theDocumentIsAsReleased() {
        var released = JsonMapper.shared().readTree(SpecFiles.read(RELEASED));
        if (!Boolean.getBoolean(ON_PURPOSE)) {
            assertThat(ApiBreaks.between(released, document().root()))
                    .as(
                            "What breaks callers of the released API. If it is meant, give -D%s=true for once and say so in the"
                                    + " changelog.",
                            ON_PURPOSE)
                    .isEmpty();
        }
        SpecFiles.hold(RELEASED, PrettyJson.of(document().root()));
    }
}
